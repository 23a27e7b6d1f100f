package ringout;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ModifiersTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/** What every source file keeps that no compiler option asks for. */
class SourceRulesTest {
    private static final Path SOURCES = Path.of("src", "main", "java");
    private static final int LONGEST_FILE = 350;

    @Test
    void everyPublicTypeAndMethodSaysWhatItIs() throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, Locale.ROOT, UTF_8)) {
            JavacTask task = (JavacTask) compiler.getTask(
                    null, files, null, List.of("-proc:none"), null, files.getJavaFileObjectsFromPaths(sources()));
            Undocumented found = new Undocumented(DocTrees.instance(task));
            for (CompilationUnitTree unit : task.parse()) {
                found.scan(unit, null);
            }
            assertFalse(found.seen == 0, "no public type or method found below " + SOURCES);
            assertEquals(List.of(), found.places);
        }
    }

    @Test
    void noFileIsLongerThanItsReadersPatience() throws IOException {
        List<String> tooLong = new ArrayList<>();
        for (Path source : sources()) {
            long lines = Files.readString(source, UTF_8).lines().count();
            if (lines > LONGEST_FILE) {
                tooLong.add(source + ": " + lines + " lines, limit " + LONGEST_FILE);
            }
        }
        assertEquals(List.of(), tooLong);
    }

    @Test
    void everyPackageIsDescribedAndFreeOfNull() throws IOException {
        Set<Path> bare = new TreeSet<>();
        for (Path source : sources()) {
            Path about = source.resolveSibling("package-info.java");
            if (!Files.exists(about) || !Files.readString(about, UTF_8).contains("@NullMarked")) {
                bare.add(about);
            }
        }
        assertEquals(Set.of(), bare);
    }

    private static List<Path> sources() throws IOException {
        try (Stream<Path> all = Files.walk(SOURCES)) {
            return all.filter(path -> path.toString().endsWith(".java"))
                    .sorted()
                    .toList();
        }
    }

    /** Public and protected types and methods without a comment; an overriding method inherits its own. */
    private static final class Undocumented extends TreePathScanner<Void, Void> {
        private final DocTrees docs;
        private final List<String> places = new ArrayList<>();
        private int seen;

        private Undocumented(DocTrees docs) {
            this.docs = docs;
        }

        @Override
        public Void visitClass(ClassTree type, Void unused) {
            if (isExposed(type.getModifiers()) && !isAnonymous(type)) {
                ask(type.getSimpleName().toString());
                return super.visitClass(type, null);
            }
            return null;
        }

        @Override
        public Void visitMethod(MethodTree method, Void unused) {
            boolean overrides = method.getModifiers().getAnnotations().stream()
                    .anyMatch(mark -> mark.getAnnotationType().toString().equals("Override"));
            boolean constructor = method.getReturnType() == null;
            if (isExposed(method.getModifiers()) && !overrides && !constructor) {
                ask(method.getName().toString());
            }
            return null;
        }

        private void ask(String name) {
            seen++;
            String comment = docs.getDocComment(getCurrentPath());
            if (comment == null || comment.isBlank()) {
                CompilationUnitTree unit = getCurrentPath().getCompilationUnit();
                long at = docs.getSourcePositions()
                        .getStartPosition(unit, getCurrentPath().getLeaf());
                places.add(
                        unit.getSourceFile().getName() + ":" + unit.getLineMap().getLineNumber(at) + ": " + name);
            }
        }

        private boolean isExposed(ModifiersTree modifiers) {
            Set<Modifier> flags = modifiers.getFlags();
            boolean inInterface = !flags.contains(Modifier.PRIVATE) && parentIsInterface();
            return flags.contains(Modifier.PUBLIC) || flags.contains(Modifier.PROTECTED) || inInterface;
        }

        private boolean parentIsInterface() {
            TreePath parent = getCurrentPath().getParentPath();
            return parent != null
                    && (parent.getLeaf().getKind() == Tree.Kind.INTERFACE
                            || parent.getLeaf().getKind() == Tree.Kind.ANNOTATION_TYPE);
        }

        private static boolean isAnonymous(ClassTree type) {
            return type.getSimpleName().isEmpty();
        }
    }
}
