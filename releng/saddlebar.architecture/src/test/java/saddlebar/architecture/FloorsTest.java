package saddlebar.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;

/** Over the built classes of all bundles. */
class FloorsTest {
    private static JavaClasses classes;

    @BeforeAll
    static void read() throws IOException {
        List<Path> folders = new ArrayList<>();
        for (String bundle : House.standing()) {
            Path built = House.BUNDLES.resolve("saddlebar." + bundle).resolve("target/classes");
            assertTrue(Files.isDirectory(built), built + " is missing: build the bundles first");
            folders.add(built);
        }
        classes = new ClassFileImporter().importPaths(folders);
        assertTrue(classes.size() > 200, "only " + classes.size() + " classes found: the import is broken"); // an empty import passes everything
    }

    @Test
    void everyBundleHasAFloor() throws IOException {
        for (String bundle : House.standing()) {
            assertTrue(House.floorOf(bundle) >= 0, "saddlebar." + bundle + " stands on no floor: add it to House and to docs/house.md");
        }
    }

    @Test
    void eachSeesOnlyFloorsBelow() throws IOException {
        List<String> standing = House.standing();
        for (String bundle : standing) {
            String[] unseen = standing.stream().filter(other -> !other.equals(bundle) && House.floorOf(other) >= House.floorOf(bundle))
                    .filter(other -> !(bundle.startsWith("ui.") && other.equals("ui"))) // a bench stands in the hall of the desktop
                    .filter(other -> !(other.startsWith("ui.") && bundle.equals("ui") && isWithin(bundle, other)))
                    .map(other -> "saddlebar." + other + "..").toArray(String[]::new);
            if (unseen.length > 0) {
                noClasses().that().resideInAPackage("saddlebar." + bundle + "..").should().dependOnClassesThat()
                        .resideInAnyPackage(unseen).check(classes);
            }
        }
    }

    /** ArchUnit's {@code ui..} covers {@code ui.kiln..} too; seen from the outer package that is no breach of its own. */
    private static boolean isWithin(String outer, String inner) {
        return inner.startsWith(outer + ".");
    }

    @Test
    void onlyTheDesktopKnowsWidgets() {
        noClasses().that().resideInAPackage("saddlebar..").and().resideOutsideOfPackage("saddlebar.ui..").should()
                .dependOnClassesThat().resideInAnyPackage("org.eclipse.swt..", "org.eclipse.jface..", "org.eclipse.ui..").check(classes);
    }

    @Test
    void pdfIsWrittenAndReadWhereTheHouseSays() {
        noClasses().that().resideInAPackage("saddlebar..").and()
                .resideOutsideOfPackages("saddlebar.artwork..", "saddlebar.stencil..", "saddlebar.report..").should()
                .dependOnClassesThat().resideInAnyPackage("org.apache.pdfbox..", "org.apache.fontbox..").check(classes);
    }

    @Test
    void onlyArtworkReadsForeignDrawings() {
        noClasses().that().resideInAPackage("saddlebar..").and().resideOutsideOfPackage("saddlebar.artwork..").should()
                .dependOnClassesThat().resideInAnyPackage("org.apache.batik..").check(classes);
    }

    @Test
    void nobodyPrintsPastTheCommandLine() {
        noClasses().that().resideInAPackage("saddlebar..").and().resideOutsideOfPackage("saddlebar.cli..").should()
                .accessField(System.class, "out").orShould().accessField(System.class, "err").check(classes);
    }
}
