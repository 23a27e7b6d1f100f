package ringout.random;

import java.util.List;
import java.util.Set;
import ringout.check.Catalogue;
import ringout.check.Review;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.finding.Finding;
import ringout.finding.Report;
import ringout.finding.Severity;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Aircraft;

/** What a report says, in short lines. */
final class Told {
    /** The checks held here. */
    static final Set<String> HELD =
            Set.copyOf(List.of(("T01 T02 T03 T04 T05 T06 T07 T08 T09 T10 T11 T12 T13 T14 T15 T17 T19 T20 "
                            + "T16 T18 T21 A01 A02 A03 A04 A05 A06 A07 A08 A09 A10 A11 A12 A13 A14 A15 P01 P02 P03 P04 P05 P06 P09 P10 "
                            + "P07 P08 P11 P12 P13 P14 P15 P16 P17 P18 P19 P20 P21 P22 P23 P24 P25 P26 P27 P28 P29 P30 P31 P32 P33 "
                            + "P34 P35 P36 P37 P38 S17 S18 M15 "
                            + "S01 S02 S03 S04 S05 S06 S07 S08 S10 S11 S12 S13 S09 S15 S16 S19 S20 S21 S22 S23 S24 S25 M16 M17 B05 X01 X02 X14")
                    .split(" ")));

    private Told() {}

    /** What the checks of {@link #HELD} say. */
    static Report review(Aircraft aircraft) {
        List<Check> checks = Catalogue.all().stream()
                .filter(check -> HELD.contains(
                        check.getClass().getAnnotation(CheckInfo.class).code()))
                .toList();
        return Review.of(Circuit.all(Wiring.of(aircraft)), checks, Review.NO_DAY);
    }

    /** Findings one must not hand over with. */
    static List<String> heavy(Report report) {
        return report.headlines().stream()
                .map(headline -> headline.finding())
                .filter(finding -> finding.severity().atLeast(Severity.S3))
                .map(Told::line)
                .toList();
    }

    static String line(Finding finding) {
        return finding.severity() + " " + finding.code() + " " + finding.title() + " " + finding.objects();
    }

    /** What could not be decided. */
    static List<String> open(Report report) {
        return report.cannotTell().stream()
                .map(open -> open.code() + " " + open.missing() + " of " + open.objects())
                .toList();
    }
}
