package saddlebar.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.Manifest;

import org.junit.jupiter.api.Test;

/** What the manifests say must keep to the floors too: a class test sees no import that nobody uses yet. */
class ManifestsTest {
    @Test
    void importsKeepToTheFloors() throws IOException {
        List<String> breaches = new ArrayList<>();
        List<String> standing = House.standing();
        assertTrue(standing.size() >= 8, "bundles found: " + standing);
        for (String bundle : standing) {
            Attributes manifest = manifestOf(bundle);
            List<String> named = new ArrayList<>(names(manifest.getValue("Import-Package")));
            named.addAll(names(manifest.getValue("Require-Bundle")));
            for (String name : named) {
                for (String other : standing) {
                    boolean within = name.equals("saddlebar." + other) || name.startsWith("saddlebar." + other + ".");
                    boolean bench = bundle.startsWith("ui.") && other.equals("ui");
                    if (within && !other.equals(bundle) && !bench && House.floorOf(other) >= House.floorOf(bundle)) {
                        breaches.add("saddlebar." + bundle + " names " + name);
                    }
                }
            }
        }
        assertEquals(List.of(), breaches);
    }

    @Test
    void everyBundleRunsOnTheSameJava() throws IOException {
        for (String bundle : House.standing()) {
            assertEquals("JavaSE-17", manifestOf(bundle).getValue("Bundle-RequiredExecutionEnvironment"), bundle);
        }
    }

    @Test
    void everyExportedPackageHasAVersion() throws IOException {
        for (String bundle : House.standing()) {
            String exported = manifestOf(bundle).getValue("Export-Package");
            for (String clause : clauses(exported)) {
                assertTrue(clause.contains(";version="), "saddlebar." + bundle + " exports without a version: " + clause);
            }
        }
    }

    private static Attributes manifestOf(String bundle) throws IOException {
        Path file = House.BUNDLES.resolve("saddlebar." + bundle).resolve("META-INF/MANIFEST.MF");
        try (InputStream in = Files.newInputStream(file)) {
            return new Manifest(in).getMainAttributes();
        }
    }

    private static List<String> names(String header) {
        return clauses(header).stream().map(clause -> clause.split(";")[0].strip()).toList();
    }

    /** Splits at commas that stand outside quotation marks. */
    private static List<String> clauses(String header) {
        return header == null ? List.of() : List.of(header.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)"));
    }
}
