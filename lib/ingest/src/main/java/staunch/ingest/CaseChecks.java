package staunch.ingest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import staunch.envelope.Drilling;
import staunch.envelope.SectionPlan;
import staunch.units.Measure;
import staunch.units.UnitSystem;
import staunch.well.CasingInterval;
import staunch.well.CasingString;
import staunch.well.Datum;
import staunch.well.HoleInterval;
import staunch.well.StringComponent;
import staunch.well.WellPath;

/** Checks what strings, sections and hole say together. */
final class CaseChecks {
    private static final double SAME_DEPTH = 0.01;

    private final Optional<Datum> datum;
    private final Optional<WellPath> path;
    private final UnitSystem units;
    private final FaultLog log;

    CaseChecks(Optional<Datum> datum, Optional<WellPath> path, UnitSystem units, FaultLog log) {
        this.datum = datum;
        this.path = path;
        this.units = units;
        this.log = log;
    }

    /** Where a part has a fault of its own, what depends on all parts is not looked at. */
    void check(DesignBuilder.Built design) {
        List<Placed<SectionPlan>> sections = design.sections();
        List<Placed<CasingString>> strings = design.strings();
        for (int i = 0; i < sections.size(); i++) {
            boolean contiguous = !design.wholeSections() || isContiguous(sections, i);
            if (design.wholeStrings() && contiguous) {
                shoe(sections.get(i), i, strings);
            }
            size(sections.get(i), strings);
        }
        for (int i = 0; i < strings.size(); i++) {
            position(strings.get(i));
            cement(strings.get(i));
            if (design.wholeStrings()) {
                nested(strings, i);
            }
            if (design.wholeSections()) {
                hole(strings.get(i), sections);
            }
        }
    }

    /** A section goes on below the one before it, without a gap. */
    private boolean isContiguous(List<Placed<SectionPlan>> sections, int i) {
        SectionPlan here = sections.get(i).value();
        Fields f = sections.get(i).fields();
        if (i == 0) {
            boolean inAir = datum.isPresent() && here.topDepth() < datum.get().groundOrSeabedDepth() - SAME_DEPTH;
            if (inAir) {
                log.add(
                        f.place("from"),
                        f.written("from"),
                        f.written("from") + " is above ground or seabed at "
                                + depth(datum.get().groundOrSeabedDepth()),
                        "depths count from the datum");
            }
            return !inAir;
        }
        SectionPlan above = sections.get(i - 1).value();
        if (here.topDepth() <= above.topDepth() + SAME_DEPTH || here.bottomDepth() <= above.bottomDepth()) {
            log.add(
                    f.place("from"),
                    f.written("from"),
                    "does not go on below \"" + above.name() + "\"",
                    "sort the sections downwards");
            return false;
        }
        if (here.topDepth() > above.bottomDepth() + SAME_DEPTH) {
            log.add(
                    f.place("from"),
                    f.written("from"),
                    f.written("from") + " leaves a gap below \"" + above.name() + "\", which ends at "
                            + depth(above.bottomDepth()),
                    "let it begin at the shoe set in that section");
            return false;
        }
        return true;
    }

    /** A section begins at a shoe, and can be shut in only below one. */
    private void shoe(Placed<SectionPlan> section, int i, List<Placed<CasingString>> strings) {
        SectionPlan here = section.value();
        Fields f = section.fields();
        boolean riserless = here.drilling() == Drilling.RISERLESS;
        if (riserless && datum.isPresent() && datum.get().place() instanceof Datum.OnLand) {
            log.add(f.place("drilling"), "riserless", "riserless is for a well at sea", "use diverter or shut_in");
        }
        if (here.drilling() == Drilling.SHUT_IN && set(here, strings).isEmpty()) {
            log.add(
                    f.place("drilling"),
                    "shut_in",
                    "shut_in needs casing above the section",
                    "set a string above it, or use diverter or riserless");
            return;
        }
        boolean atShoe =
                strings.stream().anyMatch(s -> Math.abs(s.value().shoeDepth() - here.topDepth()) <= SAME_DEPTH);
        if (i > 0 && !atShoe) {
            String shoes =
                    strings.stream().map(s -> depth(s.value().shoeDepth())).collect(Collectors.joining(", "));
            log.add(
                    f.place("from"),
                    f.written("from"),
                    "no casing shoe stands at " + f.written("from"),
                    shoes.isEmpty() ? "set a string there" : "the shoes stand at " + shoes);
        }
    }

    /** The bit passes the casing, and the string fits into the hole. */
    private void size(Placed<SectionPlan> section, List<Placed<CasingString>> strings) {
        SectionPlan plan = section.value();
        Fields f = section.fields();
        for (Placed<CasingString> string : set(plan, strings)) {
            for (CasingInterval interval : string.value().intervals()) {
                if (plan.bitDiameter() > interval.insideDiameter()) {
                    log.add(
                            f.place("bit"),
                            f.written("bit"),
                            f.written("bit") + " does not pass \""
                                    + string.value().name() + "\" with inside diameter "
                                    + diameter(interval.insideDiameter()),
                            "check the bit and the casing");
                    break;
                }
            }
        }
        if (plan.string().isPresent()) {
            List<StringComponent> components = plan.string().get().components();
            List<Fields> rows = f.rows("string");
            for (int i = 0; i < components.size() && rows.size() == components.size(); i++) {
                if (components.get(i).outsideDiameter() > plan.bitDiameter()) {
                    log.add(
                            rows.get(i).place("outside_diameter"),
                            rows.get(i).written("outside_diameter"),
                            rows.get(i).written("outside_diameter") + " is larger than the bit of " + f.written("bit"),
                            "check both");
                }
            }
        }
        if (plan.bitOffBottom() > plan.bottomDepth()) {
            log.add(
                    f.place("bit_off_bottom"),
                    f.written("bit_off_bottom"),
                    f.written("bit_off_bottom") + " is more than the depth of the hole",
                    "give the distance of the bit above bottom");
        }
    }

    private static List<Placed<CasingString>> set(SectionPlan plan, List<Placed<CasingString>> strings) {
        return strings.stream()
                .filter(s -> s.value().shoeDepth() <= plan.topDepth() + SAME_DEPTH)
                .toList();
    }

    private void position(Placed<CasingString> string) {
        CasingString s = string.value();
        Fields f = string.fields();
        if (path.isPresent() && s.shoeDepth() > path.get().end() + SAME_DEPTH) {
            log.add(
                    f.place("shoe"),
                    f.written("shoe"),
                    f.written("shoe") + " is below the end of the survey at "
                            + depth(path.get().end()),
                    "carry the survey on or raise the shoe");
        }
        if (datum.isPresent()
                && datum.get().stackAtSeabed()
                && s.topDepth() < datum.get().stackDepth() - 10) {
            log.add(
                    f.place("top"),
                    f.written("top"),
                    f.written("top") + " is above the wellhead on the seabed at "
                            + depth(datum.get().stackDepth()),
                    "a string of a subsea well hangs in its wellhead");
        }
    }

    private void cement(Placed<CasingString> string) {
        CasingString s = string.value();
        Fields f = string.fields();
        if (s.topOfCement().isPresent()) {
            double top = s.topOfCement().getAsDouble();
            if (top < s.topDepth() - SAME_DEPTH || top > s.shoeDepth() + SAME_DEPTH) {
                log.add(
                        f.place("top_of_cement"),
                        f.written("top_of_cement"),
                        f.written("top_of_cement") + " is outside the string, which reaches from " + depth(s.topDepth())
                                + " to " + depth(s.shoeDepth()),
                        "check it");
            }
        }
    }

    /** A string fits into those set before it, and a liner begins above the shoe that carries it. */
    private void nested(List<Placed<CasingString>> strings, int i) {
        CasingString inner = strings.get(i).value();
        Fields f = strings.get(i).fields();
        List<CasingString> before = new ArrayList<>();
        for (int k = 0; k < i; k++) {
            before.add(strings.get(k).value());
        }
        for (CasingString outer : before) {
            if (inner.shoeDepth() <= outer.shoeDepth() && inner.shoeDepth() > outer.topDepth()) {
                log.add(
                        f.place("shoe"),
                        f.written("shoe"),
                        f.written("shoe") + " is not below the shoe of \"" + outer.name() + "\" at "
                                + depth(outer.shoeDepth()),
                        "list the strings in the order they are set");
                return;
            }
            Optional<String> clash = clash(inner, outer);
            if (clash.isPresent()) {
                log.add(
                        f.place("outside_diameter"),
                        f.written("outside_diameter"),
                        "\"" + inner.name() + "\" " + clash.get(),
                        "check the diameters");
                return;
            }
        }
        Optional<CasingString> carrier = before.stream().max(Comparator.comparingDouble(CasingString::shoeDepth));
        if (carrier.isPresent() && inner.topDepth() > carrier.get().shoeDepth() - SAME_DEPTH) {
            log.add(
                    f.place("top"),
                    f.written("top"),
                    f.written("top") + " is not above the shoe of \""
                            + carrier.get().name() + "\" at "
                            + depth(carrier.get().shoeDepth()),
                    "let the liner overlap the string that carries it");
        }
    }

    private Optional<String> clash(CasingString inner, CasingString outer) {
        for (CasingInterval i : inner.intervals()) {
            for (CasingInterval o : outer.intervals()) {
                boolean meet = i.topDepth() < o.bottomDepth() && i.bottomDepth() > o.topDepth();
                if (meet && i.outsideDiameter() >= o.insideDiameter()) {
                    return Optional.of(
                            "with outside diameter " + diameter(i.outsideDiameter()) + " does not fit into \""
                                    + outer.name() + "\" with inside diameter " + diameter(o.insideDiameter()));
                }
            }
        }
        return Optional.empty();
    }

    /** A string stands in a hole that is drilled for it and that it fits into. */
    private void hole(Placed<CasingString> string, List<Placed<SectionPlan>> sections) {
        CasingString s = string.value();
        Fields f = string.fields();
        if (sections.isEmpty()) {
            return;
        }
        SectionPlan last = sections.get(sections.size() - 1).value();
        SectionPlan first = sections.get(0).value();
        if (s.shoeDepth() > last.bottomDepth() + SAME_DEPTH) {
            log.add(
                    f.place("shoe"),
                    f.written("shoe"),
                    f.written("shoe") + " is below the deepest section, which ends at " + depth(last.bottomDepth()),
                    "drill to it or raise the shoe");
            return;
        }
        if (s.shoeDepth() <= first.topDepth() + SAME_DEPTH) {
            return;
        }
        for (Placed<SectionPlan> section : sections) {
            SectionPlan plan = section.value();
            boolean drilledFor =
                    s.shoeDepth() > plan.topDepth() + SAME_DEPTH && s.shoeDepth() <= plan.bottomDepth() + SAME_DEPTH;
            if (drilledFor) {
                fits(string, plan);
                return;
            }
        }
    }

    private void fits(Placed<CasingString> string, SectionPlan plan) {
        for (CasingInterval casing : string.value().intervals()) {
            for (HoleInterval open : plan.hole()) {
                boolean meet = casing.topDepth() < open.bottomDepth() && casing.bottomDepth() > open.topDepth();
                if (meet && casing.outsideDiameter() >= open.diameter()) {
                    log.add(
                            string.fields().place("outside_diameter"),
                            string.fields().written("outside_diameter"),
                            "\"" + string.value().name() + "\" with outside diameter "
                                    + diameter(casing.outsideDiameter()) + " does not fit into the hole of "
                                    + diameter(open.diameter()) + " of \"" + plan.name() + "\"",
                            "check casing and hole");
                    return;
                }
            }
        }
    }

    private String depth(double value) {
        return units.precise(value, Measure.DEPTH);
    }

    private String diameter(double value) {
        return units.precise(value, Measure.DIAMETER);
    }
}
