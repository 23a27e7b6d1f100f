package ringout.present.text;

import ringout.finding.Finding;
import ringout.finding.Place;
import ringout.finding.Report;

/** One finding in one line, for editors and search: place, severity, code, title. */
public final class LineReport {
    private LineReport() {}

    /** All headlines of a report and all that could not be decided, one line each. */
    public static String of(Report report) {
        StringBuilder text = new StringBuilder();
        report.headlines()
                .forEach(headline -> text.append(of(headline.finding())).append('\n'));
        report.cannotTell().forEach(open -> text.append(TextReport.of(open)));
        return text.toString();
    }

    /** The line, without its end. */
    public static String of(Finding finding) {
        String place = finding.at().stream()
                .map(Place::span)
                .filter(span -> span.known())
                .findFirst()
                .map(span -> span.file() + ":" + span.line() + ":" + Math.max(1, span.column()) + ": ")
                .orElse("");
        return place + finding.severity() + " " + finding.code() + " " + finding.title();
    }
}
