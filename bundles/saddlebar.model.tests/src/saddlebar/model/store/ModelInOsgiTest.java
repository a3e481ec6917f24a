package saddlebar.model.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.Platform;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.FrameworkUtil;

import saddlebar.model.commission.Commission;
import saddlebar.model.commission.CommissionPackage;

/** What only a running OSGi can show: the registrations of plugin.xml, and that every package the store needs is wired. */
class ModelInOsgiTest {
    @TempDir
    Path temp;

    private static List<IConfigurationElement> ours(String point) {
        return Arrays.stream(Platform.getExtensionRegistry().getConfigurationElementsFor(point))
                .filter(element -> element.getContributor().getName().equals("saddlebar.model")).toList();
    }

    @Test
    void thePackageIsRegistered() {
        assertEquals("saddlebar.model", FrameworkUtil.getBundle(CommissionFolder.class).getSymbolicName());
        List<IConfigurationElement> packages = ours("org.eclipse.emf.ecore.generated_package");
        assertEquals(1, packages.size());
        assertEquals(CommissionPackage.eNS_URI, packages.get(0).getAttribute("uri"));
        assertSame(CommissionPackage.eINSTANCE, EPackage.Registry.INSTANCE.getEPackage("urn:saddlebar:commission:1"));
        assertNotNull(FrameworkUtil.getBundle(CommissionFolder.class).getEntry(packages.get(0).getAttribute("genModel")), "the genmodel is in the bundle");
    }

    @Test
    void filesThatEndInSaddlebarHaveTheGuardedFactory() throws IOException {
        assertEquals(1, ours("org.eclipse.emf.ecore.extension_parser").size());
        Resource.Factory factory = Resource.Factory.Registry.INSTANCE.getFactory(URI.createURI("windows/W01.saddlebar"));
        Object real = factory instanceof Resource.Factory.Descriptor descriptor ? descriptor.createFactory() : factory;
        assertInstanceOf(ModelResourceFactory.class, real);
        CommissionFolder.create(temp.resolve("c"), NewCommission.titled("title")).close();
        Resource resource = new ResourceSetImpl().getResource(URI.createFileURI(temp.resolve("c/commission.saddlebar").toRealPath().toString()), true);
        assertInstanceOf(ModelResource.class, resource);
        assertEquals("title", ((Commission) resource.getContents().get(0)).getTitle());
    }

    @Test
    void aCommissionIsSavedAndLoaded() throws IOException {
        Path place = temp.resolve("c");
        try (CommissionFolder made = CommissionFolder.create(place, NewCommission.titled("title"))) {
            made.addWindow("W01", "Ebb tide");
            made.save();
            made.records().append(RecordDraft.of(RecordKind.NOTE).noting("made in OSGi"));
        }
        assertTrue(Files.isRegularFile(place.resolve("windows/W01.saddlebar")));
        try (CommissionFolder read = CommissionFolder.open(place, Access.READ); RecordReading records = read.records().read()) {
            assertEquals("Ebb tide", read.window("W01").orElseThrow().getTitle());
            assertEquals("made in OSGi", records.toList().get(0).note());
            assertEquals(List.of(), records.problems());
        }
    }

    /** The document parser and writer of the migration come from packages that the manifest must import. */
    @Test
    void anOlderFormatIsBroughtUpToDate() throws IOException {
        byte[] old = "<c:Studio xmlns:c=\"urn:saddlebar:commission:0\" formatVersion=\"0\"/>".getBytes(java.nio.charset.StandardCharsets.UTF_8);
        String current = new String(Formats.current().broughtUpToDate("old", old, 0), java.nio.charset.StandardCharsets.UTF_8);
        assertTrue(current.contains("urn:saddlebar:commission:1"), current);
    }
}
