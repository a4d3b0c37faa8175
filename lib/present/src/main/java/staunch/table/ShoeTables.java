package staunch.table;

import static java.math.RoundingMode.CEILING;
import static java.math.RoundingMode.FLOOR;
import static java.math.RoundingMode.HALF_EVEN;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import staunch.design.JointShoes;
import staunch.design.ShoeObstacle;
import staunch.design.ShoeSearch;
import staunch.design.ShoeStretch;
import staunch.design.ShoeWindow;
import staunch.units.Measure;
import staunch.units.UnitSystem;

/** Tables of a shoe search. */
public final class ShoeTables {
    /** Twice the distance to which a boundary is found, m. */
    private static final double BOUNDARY = 0.04;

    private ShoeTables() {}

    /** Every table of a shoe search. */
    public static List<ResultTable> all(ShoeSearch search, UnitSystem units) {
        return List.of(shallowest(search, units), stretches(search, units), joint(search, units));
    }

    /** Each string with its planned shoe, the shallowest depth allowed and what binds it there. */
    public static ResultTable shallowest(ShoeSearch search, UnitSystem units) {
        return new Rows<>(search.windows(), units)
                .text("String", ShoeWindow::string)
                .number("Planned shoe MD", Measure.DEPTH, HALF_EVEN, ShoeWindow::planned)
                .text("Planned shoe", ShoeTables::planned)
                .optional("Shallowest MD", Measure.DEPTH, CEILING, w -> from(w.shallowest()))
                .optional("Deepest MD", Measure.DEPTH, FLOOR, w -> deepest(w))
                .text(
                        "Stretches",
                        w -> w.notSearched().isPresent()
                                ? ""
                                : String.valueOf(w.allowed().size()))
                .text(
                        "Bound above by",
                        w -> w.shallowest()
                                .map(s -> text(s.boundAbove()))
                                .orElseGet(() -> w.notSearched().orElse("allowed nowhere")))
                .table(
                        "Shoe depths",
                        "One string moved at a time, the others as planned; "
                                + search.mud().title() + ". Shallowest depth rounded down the hole, deepest up.");
    }

    private static String planned(ShoeWindow window) {
        if (window.notSearched().isPresent()) {
            return "not searched";
        }
        return window.plannedAllowed() ? "allowed" : "not allowed";
    }

    private static OptionalDouble from(Optional<ShoeStretch> stretch) {
        return stretch.isPresent() ? OptionalDouble.of(stretch.get().from()) : OptionalDouble.empty();
    }

    private static OptionalDouble deepest(ShoeWindow window) {
        return window.allowed().stream().mapToDouble(ShoeStretch::to).max();
    }

    /** Every stretch of the search, allowed or not, with what binds at either end. */
    public static ResultTable stretches(ShoeSearch search, UnitSystem units) {
        record Row(String string, ShoeStretch stretch) {}
        List<Row> all = search.windows().stream()
                .flatMap(w -> w.stretches().stream().map(s -> new Row(w.string(), s)))
                .toList();
        return new Rows<>(all, units)
                .text("String", Row::string)
                .text("Shoe", r -> r.stretch().allowed() ? "allowed" : "not allowed")
                .number("From MD", Measure.DEPTH, HALF_EVEN, r -> r.stretch().from())
                .number("To MD", Measure.DEPTH, HALF_EVEN, r -> r.stretch().to())
                .number("From TVD", Measure.DEPTH, HALF_EVEN, r -> r.stretch().fromVertical())
                .number("To TVD", Measure.DEPTH, HALF_EVEN, r -> r.stretch().toVertical())
                .text("Upper end", r -> brief(r.stretch().boundAbove()))
                .text("Lower end", r -> brief(r.stretch().boundBelow()))
                .table(
                        "Where the shoes may stand",
                        "At either end: what is not met just beyond it, or in it where no shoe may stand. Boundaries are"
                                + " found to better than "
                                + units.text(BOUNDARY, Measure.LENGTH, CEILING)
                                + "; away from depths where something jumps, a stretch"
                                + " shorter than " + units.text(search.resolution(), Measure.LENGTH)
                                + " may be missed.");
    }

    /** Shoe depths of all strings together. */
    public static ResultTable joint(ShoeSearch search, UnitSystem units) {
        record Row(JointShoes joint, String string, Optional<JointShoes.Shoe> shoe) {}
        List<Row> all = new ArrayList<>();
        for (JointShoes joint : search.joint()) {
            joint.shoes().forEach(s -> all.add(new Row(joint, s.string(), Optional.of(s))));
            joint.leftOut().forEach(name -> all.add(new Row(joint, name, Optional.empty())));
            if (joint.design().isEmpty()) {
                all.add(new Row(joint, "all", Optional.empty()));
            }
        }
        return new Rows<>(all, units)
                .text("Search", r -> r.joint().direction().title())
                .text("String", Row::string)
                .optional("Shoe MD", Measure.DEPTH, HALF_EVEN, r -> depth(r.shoe()))
                .optional("Shoe TVD", Measure.DEPTH, HALF_EVEN, r -> vertical(r.shoe()))
                .optional(
                        "Planned MD",
                        Measure.DEPTH,
                        HALF_EVEN,
                        r -> search.windows().stream()
                                .filter(w -> w.string().equals(r.string()))
                                .mapToDouble(ShoeWindow::planned)
                                .findFirst())
                .text("Bound by", r -> r.shoe().map(s -> text(s.boundBy())).orElseGet(() -> without(r.joint(), units)))
                .table(
                        "All strings together",
                        "The fewest strings that meet every criterion; "
                                + search.mud().title() + ". Complete on depths of every string at most "
                                + units.text(search.jointResolution(), Measure.LENGTH)
                                + " apart, either side of every jump, and the boundaries met in setting one string after"
                                + " another; what is found is then moved on to its boundary.");
    }

    private static String without(JointShoes joint, UnitSystem units) {
        return joint.design().isPresent() ? "left out: not needed" : statement(joint, units);
    }

    /** What the search for all strings together found, and what stopped it where nothing was. */
    public static String statement(JointShoes joint, UnitSystem units) {
        return joint.statement()
                + joint.block()
                        .map(b -> "; nearest miss: the hole from "
                                + end(b.upper(), "the top of the search", b.from(), units) + " to "
                                + end(b.lower(), "the bottom", b.to(), units) + ", "
                                + text(b.obstacles()))
                        .orElse("");
    }

    private static String end(Optional<String> string, String none, double depth, UnitSystem units) {
        return string.orElse(none) + " at " + units.text(depth, Measure.DEPTH);
    }

    private static OptionalDouble depth(Optional<JointShoes.Shoe> shoe) {
        return shoe.isPresent() ? OptionalDouble.of(shoe.get().measuredDepth()) : OptionalDouble.empty();
    }

    private static OptionalDouble vertical(Optional<JointShoes.Shoe> shoe) {
        return shoe.isPresent() ? OptionalDouble.of(shoe.get().verticalDepth()) : OptionalDouble.empty();
    }

    private static String brief(List<ShoeObstacle> obstacles) {
        return obstacles.stream().map(ShoeObstacle::text).distinct().collect(Collectors.joining("; "));
    }

    private static String text(List<ShoeObstacle> obstacles) {
        return obstacles.stream().map(ShoeTables::text).distinct().collect(Collectors.joining("; "));
    }

    /** A criterion with its section and, where the criterion alone does not say it, what governs. */
    private static String text(ShoeObstacle obstacle) {
        return switch (obstacle.criterion()) {
            case PORE_PRESSURE, STRENGTH, NOT_SHUT_IN_ABOVE, END_OF_SEARCH -> obstacle.text();
            case NOT_ASSESSED -> (obstacle.section() + " " + obstacle.statement()).strip();
            case STAY_OUT -> obstacle.governing() + ": " + obstacle.statement();
            case DRILLED_TOLERANCE, SWABBED_TOLERANCE, CASING_OR_EQUIPMENT ->
                obstacle.text() + (obstacle.governing().isEmpty() ? "" : " (" + obstacle.governing() + ")");
        };
    }
}
