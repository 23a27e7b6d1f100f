import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Collections;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;

/**
 * Build step: gives the Java 5 classes of a jar the form of Java 8, in place.
 *
 * <p>Some libraries are still compiled for Java 5. The JVM keeps such classes out of its class-data archive ("Pre JDK 6
 * class not supported by CDS") and checks them with its slow, old verifier: a third of the start-up time of a small
 * command. Nothing but the class file version and the stack map frames changes. A class whose relatives are not in the
 * jar cannot be given frames and stays as it is.
 *
 * <p>Call: {@code java -cp asm.jar ModernBytecode.java JAR}. Same jar in, same bytes out.
 */
public final class ModernBytecode {
    private static final int OLDEST_FIT_FOR_THE_ARCHIVE = Opcodes.V1_6;

    public static void main(String[] args) throws IOException {
        Path jar = Path.of(args[0]);
        Path made = jar.resolveSibling(jar.getFileName() + ".modern");
        int raised = 0;
        int left = 0;
        try (JarFile in = new JarFile(jar.toFile());
                ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(made));
                URLClassLoader relatives = new URLClassLoader(new URL[] {jar.toUri().toURL()}, null)) {
            for (JarEntry entry : Collections.list(in.entries())) {
                byte[] bytes = read(in, entry);
                if (entry.getName().endsWith(".class") && version(bytes) < OLDEST_FIT_FOR_THE_ARCHIVE) {
                    byte[] better = raise(bytes, relatives);
                    raised += better == bytes ? 0 : 1;
                    left += better == bytes ? 1 : 0;
                    bytes = better;
                }
                write(out, entry, bytes);
            }
        }
        Files.move(made, jar, StandardCopyOption.REPLACE_EXISTING);
        System.out.println(raised + " classes raised to Java 8, " + left + " left as they are");
    }

    private static int version(byte[] classFile) {
        return (classFile[6] & 0xff) << 8 | classFile[7] & 0xff;
    }

    private static byte[] raise(byte[] old, ClassLoader relatives) {
        ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_FRAMES) {
            @Override
            protected ClassLoader getClassLoader() {
                return relatives;
            }
        };
        ClassVisitor raiser = new ClassVisitor(Opcodes.ASM9, writer) {
            @Override
            public void visit(int version, int access, String name, String sign, String parent, String[] interfaces) {
                super.visit(Opcodes.V1_8, access, name, sign, parent, interfaces);
            }
        };
        try {
            new ClassReader(old).accept(raiser, ClassReader.SKIP_FRAMES);
            return writer.toByteArray();
        } catch (TypeNotPresentException | LinkageError | IllegalArgumentException relativeIsMissing) {
            return old;
        }
    }

    private static byte[] read(JarFile jar, JarEntry entry) throws IOException {
        try (InputStream in = jar.getInputStream(entry)) {
            return in.readAllBytes();
        }
    }

    private static void write(ZipOutputStream out, JarEntry from, byte[] bytes) throws IOException {
        ZipEntry to = new ZipEntry(from.getName());
        to.setTimeLocal(from.getTimeLocal());
        out.putNextEntry(to);
        out.write(bytes);
    }
}
