package ringout.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;

/**
 * Runs each check alone over the small aircraft in its folder and compares everything it says, places and identities
 * included, with the text beside them. What a check said is left in {@code target/checks}. {@code -Dchecks=T07} runs the
 * folders of codes that start so.
 */
class CheckFixturesTest {
    private static final Map<String, Check> BY_CODE = Catalogue.all().stream()
            .collect(Collectors.toMap(
                    check -> check.getClass().getAnnotation(CheckInfo.class).code(), Function.identity()));

    @TestFactory
    Stream<DynamicTest> everyFixtureSaysWhatIsWrittenBesideIt() throws IOException {
        String wanted = System.getProperty("checks", "");
        return Fixture.all().stream()
                .filter(fixture -> fixture.code().startsWith(wanted))
                .map(fixture -> dynamicTest(fixture.code() + " " + fixture.name(), () -> compare(fixture)));
    }

    private static void compare(Fixture fixture) throws IOException {
        Check check = BY_CODE.get(fixture.code());
        if (check == null) {
            throw new AssertionError("no check " + fixture.code() + " in the catalogue");
        }
        String actual = fixture.actual(check);
        fixture.leave(actual);
        assertEquals(fixture.expected(), actual, () -> "see target/checks/" + fixture.code());
    }
}
