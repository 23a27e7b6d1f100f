package ringout.sheet.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.graph.Circuit;
import ringout.plan.power.PowerUps;
import ringout.sheet.Cautions;
import ringout.sheet.build.PowerUpDocument;
import ringout.sheet.document.Document;
import ringout.sheet.document.Figure;
import ringout.sheet.document.Section;

/** The whole pack of documents to hand over, in the order they are read. */
public final class Pack {
    private Pack() {}

    /**
     * {@return all documents, numbered through}
     *
     * @param plates drawings that belong into it
     * @param earlier the aircraft it is compared with: an earlier revision, another tail; nothing when none is given
     */
    public static List<Document> of(PackSource from, Plates plates, Optional<Circuit> earlier) {
        List<Document> others = new ArrayList<>();
        others.add(FindingSheet.of(from));
        others.add(Limitations.of(from));
        others.add(WireList.of(from));
        others.add(PinTables.of(from));
        drawings(from, "plug-faces", "Plug faces", plates.faces()).ifPresent(others::add);
        others.add(BillOfMaterial.of(from));
        others.add(CutList.of(from));
        drawings(from, "lead-drawings", "Lead drawings", plates.leads()).ifPresent(others::add);
        others.add(RingOut.of(from));
        others.add(ShortSheet.of(from));
        others.add(AsFitted.of(from));
        others.add(PowerUpDocument.of(PowerUps.of(from.circuit()), from.mark(), from.signOff()));
        drawings(from, "motor-map", "Map of motors and surfaces", plates.maps()).ifPresent(others::add);
        others.add(MotorSheet.of(from));
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

    private static Optional<Document> drawings(PackSource from, String kind, String title, List<Figure> figures) {
        if (figures.isEmpty()) {
            return Optional.empty();
        }
        List<Section> sections = figures.stream()
                .map(figure -> new Section(figure.title(), List.of(figure)))
                .toList();
        return Optional.of(
                new Document(kind, title, from.mark(), 1, 1, Document.Form.DRAWINGS, Cautions.FOOT, sections));
    }
}
