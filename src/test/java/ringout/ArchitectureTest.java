package ringout;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.belongToAnyOf;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import java.io.File;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.FileReader;
import java.io.FileWriter;
import java.io.RandomAccessFile;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.util.List;
import java.util.Set;

/** Keeps the house in order: one direction of flow, no cycles, and the outside world only where it belongs. */
@AnalyzeClasses(packages = "ringout", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    /** Low to high. A layer may use only the layers before it. */
    private static final List<String> LAYERS = List.of(
            "text", "model", "read", "graph", "solve", "finding", "check", "repair", "trace", "plan", "compare",
            "sheet", "draw", "present", "cli");

    @ArchTest
    static final ArchRule eachLayerUsesOnlyTheLayersBeforeIt = onlyDownwards();

    @ArchTest
    static final ArchRule everyClassStandsInALayer = classes()
            .should()
            .resideInAnyPackage(LAYERS.stream().map(ArchitectureTest::within).toArray(String[]::new));

    @ArchTest
    static final ArchRule noPackageCycles =
            slices().matching("ringout.(**)").should().beFreeOfCycles().allowEmptyShould(true);

    @ArchTest
    static final ArchRule theCoreDoesNotKnowHowItsInputWasRead = noClasses()
            .that(resideInAnyPackage(within("graph"), within("solve"), within("finding"), within("check")))
            .should()
            .dependOnClassesThat(resideInAnyPackage(within("read"), within("present")))
            .because("a verdict must not depend on the form of the input or of the output")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule onlyReadAndCliOpenFiles = noClasses()
            .that(DescribedPredicate.not(resideInAnyPackage(within("read"), within("cli"))))
            .should()
            .dependOnClassesThat(belongToAnyOf(
                    File.class,
                    FileInputStream.class,
                    FileOutputStream.class,
                    FileReader.class,
                    FileWriter.class,
                    RandomAccessFile.class,
                    FileChannel.class,
                    FileSystem.class,
                    FileSystems.class,
                    Files.class))
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule onlyCliTouchesTheProcess = noClasses()
            .that(DescribedPredicate.not(resideInAPackage(within("cli"))))
            .should()
            .accessTargetWhere(describe(
                    "is System.in, out, err or exit",
                    (JavaAccess<?> access) -> access.getTargetOwner().isEquivalentTo(System.class)
                            && Set.of("in", "out", "err", "exit")
                                    .contains(access.getTarget().getName())))
            .allowEmptyShould(true);

    private static LayeredArchitecture onlyDownwards() {
        LayeredArchitecture house =
                layeredArchitecture().consideringOnlyDependenciesInLayers().withOptionalLayers(true);
        for (String layer : LAYERS) {
            house = house.layer(layer).definedBy(within(layer));
        }
        for (int i = 0; i < LAYERS.size(); i++) {
            String[] below = LAYERS.subList(0, i).toArray(String[]::new);
            house = below.length == 0
                    ? house.whereLayer(LAYERS.get(i)).mayNotAccessAnyLayer()
                    : house.whereLayer(LAYERS.get(i)).mayOnlyAccessLayers(below);
        }
        return house;
    }

    private static String within(String layer) {
        return "ringout." + layer + "..";
    }
}
