package ringout.present.html;

import java.util.Locale;
import ringout.sheet.document.Block;
import ringout.sheet.document.Caution;
import ringout.sheet.document.Column;
import ringout.sheet.document.Figure;
import ringout.sheet.document.Group;
import ringout.sheet.document.KeyValues;
import ringout.sheet.document.Paragraph;
import ringout.sheet.document.Row;
import ringout.sheet.document.SignOff;
import ringout.sheet.document.Table;

/** Writes what stands in a document. */
final class BlockHtml {
    private final StringBuilder out;

    BlockHtml(StringBuilder out) {
        this.out = out;
    }

    void write(Block block) {
        if (block instanceof Paragraph paragraph) {
            element("p", "", paragraph.text());
        } else if (block instanceof Caution caution) {
            out.append("<div class=\"caution\" role=\"note\"><strong>CAUTION</strong><ul>\n");
            caution.lines().forEach(line -> element("li", "", line));
            out.append("</ul></div>\n");
        } else if (block instanceof KeyValues facts) {
            out.append("<dl>\n");
            for (KeyValues.Pair pair : facts.pairs()) {
                element("dt", "", pair.key());
                element("dd", "", pair.value());
            }
            out.append("</dl>\n");
        } else if (block instanceof Table table) {
            table(table);
        } else if (block instanceof Figure figure) {
            figure(figure);
        } else if (block instanceof SignOff signOff) {
            sign(signOff);
        }
    }

    private void element(String name, String kind, String text) {
        out.append('<').append(name).append(kind.isEmpty() ? "" : " class=\"" + kind + "\"");
        out.append('>')
                .append(DocumentPage.clean(text))
                .append("</")
                .append(name)
                .append(">\n");
    }

    private void figure(Figure figure) {
        String svg = figure.svg().get();
        out.append("<figure")
                .append(PlatePage.attribute(svg))
                .append('>')
                .append(svg.substring(Math.max(0, svg.indexOf("<svg"))))
                .append('\n');
        element("figcaption", "", figure.title());
        out.append("</figure>\n");
    }

    private void table(Table table) {
        if (table.rows().isEmpty()) {
            element("p", "", table.title().isEmpty() ? "none" : table.title() + ": none");
            return;
        }
        out.append("<div class=\"wide\"><table>\n");
        if (!table.title().isEmpty()) {
            element("caption", "", table.title());
        }
        out.append("<thead><tr>\n");
        for (Column column : table.columns()) {
            boolean number = column.form() == Column.Form.NUMBER;
            out.append("<th scope=\"col\"").append(number ? " class=\"number\">" : ">");
            out.append(DocumentPage.clean(column.head()));
            if (!column.unit().isEmpty()) {
                out.append("<small>").append(DocumentPage.clean(column.unit())).append("</small>");
            }
            out.append("</th>\n");
        }
        out.append("</tr></thead>\n");
        for (Group group : table.groups()) {
            out.append("<tbody>\n");
            if (!group.title().isEmpty()) {
                out.append("<tr><th scope=\"rowgroup\" colspan=\"")
                        .append(table.columns().size())
                        .append("\">");
                out.append(DocumentPage.clean(table.groupHead() + ": " + group.words()))
                        .append("</th></tr>\n");
            }
            group.rows().forEach(row -> row(table, row));
            out.append("</tbody>\n");
        }
        out.append("</table></div>\n");
    }

    private void row(Table table, Row row) {
        boolean line = row.kind() == Row.Kind.LINE;
        out.append(line ? "<tr>" : "<tr class=\"" + row.kind().name().toLowerCase(Locale.ROOT) + "\">");
        for (int i = 0; i < row.cells().size(); i++) {
            Column.Form form = table.columns().get(i).form();
            String cell = row.cells().get(i);
            boolean box = form == Column.Form.TICK && cell.isEmpty();
            element("td", kind(form), box ? "\u2610" : cell);
        }
        out.append("</tr>\n");
    }

    private static String kind(Column.Form form) {
        return switch (form) {
            case TEXT -> "";
            case NUMBER -> "number";
            case WRITE_IN -> "pen";
            case TICK -> "tick";
        };
    }

    private void sign(SignOff signOff) {
        if (!signOff.offered()) {
            out.append("<p><strong>Not to be signed: open findings forbid it</strong></p><ul>\n");
            signOff.open().forEach(line -> element("li", "", line));
            out.append("</ul>\n");
            return;
        }
        out.append("<table class=\"sign\"><tbody>\n");
        for (String role : signOff.roles()) {
            out.append("<tr><th scope=\"row\">").append(DocumentPage.clean(role));
            out.append("</th><td>name, licence</td><td>signature</td><td>date</td></tr>\n");
        }
        out.append("</tbody></table>\n");
    }
}
