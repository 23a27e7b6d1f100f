package ringout.draw.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringout.draw.face.Contact;
import ringout.draw.face.Face;
import ringout.draw.face.View;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.read.AircraftReader;
import ringout.read.source.MemoryFolder;

/** How contacts lie, from the words of the list; the expected rows are drawn by hand. */
class PlugFacesTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | 123456 | 654321",
                "'pin 1 left, seen from the wire side' | 123456 | 654321",
                "'pin 1 right, seen from the wire side' | 654321 | 123456",
                "'mating face, pin 1 on the left' | 654321 | 123456",
                "'two rows, pin 1 left' | 123/456 | 321/654",
                "'2 x 3, mating face, pin 1 at the left' | 321/654 | 123/456",
                "'3 rows, pin 1 right' | 21/43/65 | 12/34/56"
            })
    void rowsAndTheSideOfPinOneAreRead(String words, String wireSide, String mating) {
        String pins = "{'number':'1'},{'number':'2'},{'number':'3'},{'number':'4'},{'number':'5'},{'number':'6'}";
        String json =
                "{'name':'bench','types':[{'name':'BOX','plugs':[{'name':'P','face':'" + words + "','pins':[" + pins
                        + "]}]}],'units':[{'ref':'A','type':'BOX'},{'ref':'B','type':'BOX'}],"
                        + "'leads':[{'id':'W1','from':'A-P','to':'B-P'}]}";
        MemoryFolder folder = MemoryFolder.named("bench").with("aircraft.json", json.replace('\'', '"'));
        Wiring wiring = Wiring.of(AircraftReader.read(folder, "aircraft.json").aircraft());
        Circuit circuit = Circuit.all(wiring).get(0);
        Face face = new PlugFaces(circuit).of(0, 0);
        assertEquals(wireSide, words(face.seenFrom(View.WIRE_SIDE)));
        assertEquals(mating, words(face.seenFrom(View.MATING_FACE)));
    }

    private static String words(List<List<Contact>> rows) {
        List<String> words = new ArrayList<>();
        for (List<Contact> row : rows) {
            StringBuilder line = new StringBuilder();
            row.forEach(contact -> line.append(contact.number()));
            words.add(line.toString());
        }
        return String.join("/", words);
    }
}
