package ringout.sheet.build;

import java.util.ArrayList;
import java.util.List;
import ringout.sheet.document.Document;

/** All sheets of a build, in the order they are used. */
public final class BuildDocuments {
    private BuildDocuments() {}

    /** {@return the plan, each stage with the last chances of the lid it closes, and the first power-up; numbered through} */
    public static List<Document> of(BuildSource from) {
        List<Document> all = new ArrayList<>(List.of(PlanSheet.of(from)));
        List<Document> lids = LastChanceSheets.of(from);
        List<Document> stages = StageSheets.of(from);
        for (int i = 0; i < stages.size(); i++) {
            all.add(stages.get(i));
            String number = String.valueOf(i + 1);
            from.plan().lastChances().stream()
                    .filter(lid -> String.valueOf(lid.stage()).equals(number))
                    .forEach(lid -> lids.stream()
                            .filter(sheet -> sheet.kind().equals("last-chance-" + Words.file(lid.cover())))
                            .forEach(all::add));
        }
        lids.stream().filter(sheet -> !all.contains(sheet)).forEach(all::add);
        all.add(PowerUpDocument.of(from.plan().powerUp(), from.mark(), from.signOff()));
        List<Document> numbered = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            numbered.add(all.get(i).numbered(i + 1, all.size()));
        }
        return List.copyOf(numbered);
    }
}
