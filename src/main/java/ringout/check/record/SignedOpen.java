package ringout.check.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import ringout.finding.Finding;
import ringout.finding.Headline;
import ringout.finding.Report;
import ringout.finding.Severity;
import ringout.model.Aircraft;
import ringout.model.Signature;

/**
 * The rules of signing that a revision must keep before it is frozen (common practice, no source): nothing is signed while an
 * S1 or S2 is open on it, nothing is released while one is open anywhere, and who made a grave item did not inspect it (X09).
 * A waived finding is not open.
 */
public final class SignedOpen {
    private static final String ONE_PERSON = "X09";

    private SignedOpen() {}

    /** Headlines of S1 and S2 that no waiver covers. */
    public static List<Headline> open(Report report) {
        return report.headlines().stream()
                .filter(headline -> headline.finding().severity().atLeast(Severity.S2))
                .toList();
    }

    /** Every broken rule in words; none when the revision may be frozen. */
    public static List<String> rules(Aircraft aircraft, Report report) {
        List<String> broken = new ArrayList<>();
        List<Headline> open = open(report);
        for (Signature signature : aircraft.record().signatures()) {
            boolean released =
                    signature.role().or("").strip().toLowerCase(Locale.ROOT).equals("released");
            Optional<Headline> on = open.stream()
                    .filter(headline -> released || names(headline, signature.item()))
                    .findFirst();
            on.ifPresent(headline -> broken.add(signature.at().words() + ": " + signature.item() + " is signed "
                    + signature.role().or("") + " by " + signature.by().or("nobody named") + ", and "
                    + headline.finding().severity() + " " + headline.finding().code() + " is open: "
                    + headline.finding().title()));
        }
        report.headlines().stream()
                .flatMap(SignedOpen::all)
                .filter(finding -> finding.code().equals(ONE_PERSON))
                .forEach(finding -> broken.add(finding.code() + " " + finding.title()));
        return List.copyOf(broken);
    }

    private static boolean names(Headline headline, String item) {
        return all(headline)
                .anyMatch(finding -> finding.objects().stream()
                                .anyMatch(object -> object.equalsIgnoreCase(item.strip()))
                        || finding.at().stream().anyMatch(place -> place.row().equalsIgnoreCase(item.strip())));
    }

    private static Stream<Finding> all(Headline headline) {
        return Stream.concat(Stream.of(headline.finding()), headline.alsoExplains().stream());
    }
}
