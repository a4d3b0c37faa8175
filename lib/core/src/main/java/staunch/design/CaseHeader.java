package staunch.design;

import java.util.Objects;
import java.util.Optional;
import staunch.units.Check;

/**
 * Title block of a case.
 *
 * @param well name of the well
 * @param title what the case is
 * @param revision of the case
 * @param date as the case gives it
 * @param preparedBy name or initials
 * @param checkedBy name or initials
 * @param approvedBy name or initials
 * @param notice shown with every result, such as "invented well"
 */
public record CaseHeader(
        String well,
        String title,
        Optional<String> revision,
        Optional<String> date,
        Optional<String> preparedBy,
        Optional<String> checkedBy,
        Optional<String> approvedBy,
        Optional<String> notice) {
    public CaseHeader {
        Check.text("name of the well", well);
        Check.text("title of the case", title);
        Objects.requireNonNull(revision, "revision");
        Objects.requireNonNull(date, "date");
        Objects.requireNonNull(preparedBy, "preparedBy");
        Objects.requireNonNull(checkedBy, "checkedBy");
        Objects.requireNonNull(approvedBy, "approvedBy");
        Objects.requireNonNull(notice, "notice");
    }

    /** A title block of well and title alone, with the notice that is shown with every result. */
    public static CaseHeader of(String well, String title, String notice) {
        return new CaseHeader(
                well,
                title,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(notice));
    }
}
