package ringout.sheet.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.graph.Circuit;
import ringout.sheet.document.Document;
import ringout.sheet.document.Figure;

/** The whole pack of documents to hand over, in the order they are read. */
public final class Pack {
    private Pack() {}

    /**
     * {@return all documents, numbered through}
     *
     * @param maps drawings of the motors, if there are any
     * @param earlier the aircraft it is compared with: an earlier revision, another tail; nothing when none is given
     */
    public static List<Document> of(PackSource from, List<Figure> maps, Optional<Circuit> earlier) {
        List<Document> others = new ArrayList<>();
        others.add(FindingSheet.of(from));
        others.add(Limitations.of(from));
        others.add(WireList.of(from));
        others.add(PinTables.of(from));
        others.add(BillOfMaterial.of(from));
        others.add(CutList.of(from));
        others.add(RingOut.of(from));
        others.add(ShortSheet.of(from));
        others.add(AsFitted.of(from));
        others.add(PowerUpSheet.of(from));
        others.add(MotorSheet.of(from, maps));
        others.add(Configuration.of(from));
        others.add(WeightAndLoad.of(from));
        others.add(MagneticSheet.of(from));
        others.add(LossSheet.of(from));
        List<String> left = new ArrayList<>();
        for (Document record :
                List.of(RecordSheets.readings(from), RecordSheets.photos(from), RecordSheets.changes(from))) {
            if (record.tables().stream().allMatch(table -> table.rows().isEmpty())) {
                left.add("Left out, because the record holds nothing for it: " + record.title());
            } else {
                others.add(record);
            }
        }
        earlier.ifPresentOrElse(
                base -> others.add(DifferenceSheet.of(from, base)),
                () -> left.add(
                        "Left out, because no earlier revision was named: Differences from an earlier revision"));
        others.add(NotChecked.of(from));
        List<Document> all = new ArrayList<>(List.of(Cover.of(from, others, left)));
        all.addAll(others);
        List<Document> numbered = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            numbered.add(all.get(i).numbered(i + 1, all.size()));
        }
        return List.copyOf(numbered);
    }
}
