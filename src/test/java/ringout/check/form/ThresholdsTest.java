package ringout.check.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Field;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A limit that is not listed can be neither looked up nor adjusted for a project. */
class ThresholdsTest {
    @Test
    void everyLimitIsListedOnceWithItsSource() throws IllegalAccessException {
        List<Threshold> listed = Thresholds.all();
        Set<String> names = new HashSet<>();
        listed.forEach(limit -> assertTrue(names.add(limit.name()), limit.name()));
        listed.forEach(limit -> assertFalse(limit.source().isBlank(), limit.name()));
        int constants = 0;
        for (Class<?> holder : List.of(Thresholds.class, InstallationThresholds.class, RecordThresholds.class)) {
            for (Field field : holder.getDeclaredFields()) {
                if (field.getType() == Threshold.class) {
                    field.setAccessible(true);
                    assertTrue(listed.contains((Threshold) field.get(null)), field.getName());
                    constants++;
                }
            }
        }
        assertEquals(constants, listed.size());
    }
}
