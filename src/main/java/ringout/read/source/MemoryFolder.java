package ringout.read.source;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/** Named bytes in memory, for an aircraft that is not on disk. */
public final class MemoryFolder implements Folder {
    private final String title;
    private final TreeMap<String, byte[]> contents;

    private MemoryFolder(String title, Map<String, byte[]> contents) {
        this.title = title;
        this.contents = new TreeMap<>(contents);
    }

    /** An empty folder of a name. */
    public static MemoryFolder named(String title) {
        return new MemoryFolder(title, Map.of());
    }

    /** This folder and one more file. */
    public MemoryFolder with(String name, byte[] bytes) {
        MemoryFolder more = new MemoryFolder(title, contents);
        more.contents.put(plain(name), bytes.clone());
        return more;
    }

    /** This folder and one more file, as UTF-8. */
    public MemoryFolder with(String name, String text) {
        return with(name, text.getBytes(StandardCharsets.UTF_8));
    }

    @Override
    public String title() {
        return title;
    }

    @Override
    public boolean isFolder(String name) {
        String folder = plain(name);
        return folder.isEmpty() || contents.keySet().stream().anyMatch(file -> file.startsWith(folder + "/"));
    }

    @Override
    public List<String> files(String folder) {
        String plain = plain(folder);
        String prefix = plain.isEmpty() ? "" : plain + "/";
        TreeSet<String> names = new TreeSet<>();
        for (String file : contents.keySet()) {
            if (file.startsWith(prefix) && file.indexOf('/', prefix.length()) < 0) {
                names.add(file.substring(prefix.length()));
            }
        }
        return List.copyOf(names);
    }

    @Override
    public Loaded load(String name) {
        byte[] bytes = contents.get(plain(name));
        return bytes == null ? new Loaded.Absent("there is no such file") : new Loaded.Bytes(bytes);
    }

    private static String plain(String name) {
        java.util.ArrayDeque<String> steps = new java.util.ArrayDeque<>();
        for (String step : name.split("/")) {
            if (step.equals("..") && !steps.isEmpty() && !steps.peekLast().equals("..")) {
                steps.removeLast();
            } else if (!step.isEmpty() && !step.equals(".")) {
                steps.addLast(step);
            }
        }
        return String.join("/", steps);
    }
}
