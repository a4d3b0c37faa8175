package staunch.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import staunch.design.CaseHeader;
import staunch.design.WellCase;
import staunch.units.UnitSystem;

/**
 * Tables that leave the library together, with what is said of them and of what is missing among them.
 *
 * @param facts what stands above the list of tables
 * @param tables in their order
 * @param missing parts that could not be computed
 */
public record TableBook(List<Fact> facts, List<CaseTables.Entry> tables, List<Missing> missing) {
    /** What every export says of itself. */
    static final String CAUTION =
            "Planning aid: every number is to be verified by a competent person before it is used."
                    + " Local regulations, the rig's own procedures and the judgement of certified well-control staff prevail.";

    public TableBook {
        facts = List.copyOf(facts);
        tables = List.copyOf(tables);
        missing = List.copyOf(missing);
    }

    /** A line about the whole. */
    public record Fact(String name, String text) {
        public Fact {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(text, "text");
        }
    }

    /**
     * A part that could not be computed.
     *
     * @param design casing design; empty where it belongs to the case
     * @param section hole section; empty where it belongs to the whole design or case
     * @param part what is missing
     * @param reason why
     */
    public record Missing(String design, String section, String part, String reason) {
        public Missing {
            Objects.requireNonNull(design, "design");
            Objects.requireNonNull(section, "section");
            Objects.requireNonNull(part, "part");
            Objects.requireNonNull(reason, "reason");
        }

        /** In one line. */
        public String text() {
            return (design.isEmpty() ? "" : "design " + design + ", ") + (section.isEmpty() ? "" : section + ", ")
                    + part + ": " + reason;
        }
    }

    /**
     * Tables of a case under its title block.
     *
     * @param header title block of the case
     * @param units shown
     * @param tables to write
     * @param missing parts that could not be computed
     */
    public static TableBook of(
            CaseHeader header, UnitSystem units, List<CaseTables.Entry> tables, List<Missing> missing) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("Well", header.well()));
        facts.add(new Fact("Title", header.title()));
        fact(facts, "Revision", header.revision());
        fact(facts, "Date", header.date());
        fact(facts, "Notice", header.notice());
        facts.add(new Fact("Units", units.name()));
        facts.add(new Fact("Caution", CAUTION));
        return new TableBook(facts, tables, missing);
    }

    /**
     * Tables of a case under its title block, none missing.
     *
     * @param wellCase they belong to
     * @param units shown
     * @param design casing design they belong to; empty where they tell of several
     * @param tables those without rows are left out
     */
    public static TableBook of(WellCase wellCase, UnitSystem units, Optional<String> design, List<ResultTable> tables) {
        List<CaseTables.Entry> entries = tables.stream()
                .filter(t -> t.rowCount() > 0)
                .map(t -> new CaseTables.Entry(design.orElse(""), "", t))
                .toList();
        return of(wellCase.header(), units, entries, List.of());
    }

    /** Tables by themselves. */
    public static TableBook of(List<ResultTable> tables) {
        return new TableBook(
                List.of(new Fact("Caution", CAUTION)),
                tables.stream().map(t -> new CaseTables.Entry("", "", t)).toList(),
                List.of());
    }

    private static void fact(List<Fact> facts, String name, Optional<String> text) {
        text.ifPresent(t -> facts.add(new Fact(name, t)));
    }
}
