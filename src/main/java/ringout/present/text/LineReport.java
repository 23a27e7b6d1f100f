package ringout.present.text;

import ringout.finding.Finding;
import ringout.finding.Place;

/** One finding in one line, for editors and search: place, severity, code, title. */
public final class LineReport {
    private LineReport() {}

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
