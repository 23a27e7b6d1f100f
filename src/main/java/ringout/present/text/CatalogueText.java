package ringout.present.text;

import ringout.check.Catalogue;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;

/** The catalogue of checks as text: code, usual severity, name, what it needs. */
public final class CatalogueText {
    private CatalogueText() {}

    /** One line a check. */
    public static String of() {
        StringBuilder text = new StringBuilder();
        for (Check check : Catalogue.all()) {
            CheckInfo info = check.getClass().getAnnotation(CheckInfo.class);
            text.append(info.code())
                    .append("  ")
                    .append(info.severity())
                    .append("  ")
                    .append(info.name());
            if (info.needs().length > 0) {
                text.append("  (needs ").append(String.join("; ", info.needs())).append(')');
            }
            text.append('\n');
        }
        return text.toString();
    }
}
