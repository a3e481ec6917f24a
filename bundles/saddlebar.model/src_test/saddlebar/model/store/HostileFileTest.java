package saddlebar.model.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;

import saddlebar.model.problem.Refusal;

/** Model files that somebody made to do harm, or that are simply broken. */
class HostileFileTest {
    @TempDir
    Path temp;
    Path place;
    Path file;
    String good;

    @BeforeEach
    void goodCommission() throws IOException {
        place = temp.resolve("c");
        try (CommissionFolder made = CommissionFolder.create(place, NewCommission.titled("title of the good one"))) {
            made.addWindow("W01", "");
            made.save();
        }
        file = place.resolve("commission.saddlebar");
        good = Files.readString(file);
    }

    private String refused(String text) throws IOException {
        Files.writeString(file, text);
        Refusal refusal = assertThrows(Refusal.class, () -> CommissionFolder.open(place, Access.READ).close(), text);
        assertTrue(refusal.where().contains("commission.saddlebar"), refusal.getMessage());
        assertEquals(text, Files.readString(file), "a refused file is not touched");
        return refusal.getMessage();
    }

    @Test
    void theGoodOneIsRead() throws IOException {
        CommissionFolder.open(place, Access.READ).close();
    }

    @Test
    void anXmlBombIsRefusedAtItsDoctype() throws IOException {
        StringBuilder bomb = new StringBuilder("<?xml version=\"1.0\"?>\n<!DOCTYPE b [<!ENTITY a0 \"boom\">");
        for (int i = 1; i < 30; i++) {
            bomb.append("<!ENTITY a").append(i).append(" \"").append(("&a" + (i - 1) + ";").repeat(10)).append("\">");
        }
        String body = good.substring(good.indexOf("?>") + 2).replace("title of the good one", "&a29;");
        String told = refused(bomb.append("]>").append(body).toString());
        assertTrue(told.contains("commission.saddlebar:2: has a DOCTYPE"), told);
    }

    @Test
    void anExternalEntityIsRefusedAndNotFetched() throws IOException {
        Path secret = Files.writeString(temp.resolve("secret.txt"), "secret");
        String head = "<?xml version=\"1.0\"?>\n<!DOCTYPE b [<!ENTITY e SYSTEM \"" + secret.toUri() + "\">]>";
        String told = refused(head + good.substring(good.indexOf("?>") + 2).replace("title of the good one", "&e;"));
        assertFalse(told.contains("secret\""), told);
        assertTrue(refused("<?xml version=\"1.0\"?><!DOCTYPE x SYSTEM \"http://localhost:1/x.dtd\">" + good.substring(good.indexOf("?>") + 2))
                .contains("DOCTYPE"));
    }

    @Test
    void aPackageIsNeverFetched() throws IOException {
        String told = refused(good.replace("xmlns:commission=\"urn:saddlebar:commission:1\"", "xmlns:commission=\"" + temp.toUri() + "evil.ecore\""));
        assertTrue(told.contains("evil.ecore"), told);
        told = refused(good.replace("xmlns:commission=\"urn:saddlebar:commission:1\"",
                "xmlns:commission=\"urn:other\" xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\" xsi:schemaLocation=\"urn:other http://localhost:1/e.ecore\""));
        assertTrue(told.contains("urn:other"), told);
    }

    @Test
    void linksThatLeadElsewhereAreRefused() throws IOException {
        String window = "windows/W01.saddlebar";
        assertTrue(good.contains(window));
        for (String elsewhere : List.of("http://localhost:1/W01.saddlebar", "file:///etc/W01.saddlebar", "/etc/W01.saddlebar", "//host/W01.saddlebar",
                "platform:/resource/x/W01.saddlebar")) {
            String told = refused(good.replace(window, elsewhere));
            assertTrue(told.contains("which is not a relative path"), told);
        }
        Path outside = Files.createDirectories(temp.resolve("outside")).resolve("W01.saddlebar");
        Files.copy(place.resolve(window), outside);
        Files.writeString(file, good.replace(window, "../outside/W01.saddlebar"));
        try (CommissionFolder open = CommissionFolder.open(place, Access.READ)) {
            Refusal refusal = assertThrows(Refusal.class, open::windows);
            assertTrue(refusal.getMessage().contains("lies outside"), refusal.getMessage());
            assertTrue(open.commission().getWindows().get(0).eIsProxy(), "following the link by itself loads nothing either");
        }
        Files.writeString(file, good);
        Files.delete(place.resolve(window));
        Files.createSymbolicLink(place.resolve(window), outside);
        try (CommissionFolder open = CommissionFolder.open(place, Access.READ)) {
            Refusal refusal = assertThrows(Refusal.class, open::windows);
            assertTrue(refusal.getMessage().contains("by a link"), refusal.getMessage());
        }
    }

    @Test
    void aStudioElsewhereMustBeAStudioFile() throws IOException {
        String told = refused(good.replace("studio/studio.saddlebar", "windows/W01.saddlebar"));
        assertTrue(told.contains("as its studio instead of a studio.saddlebar"), told);
        Files.writeString(file, good.replace("studio/studio.saddlebar", "../nothing/studio.saddlebar"));
        Refusal refusal = assertThrows(Refusal.class, () -> CommissionFolder.open(place, Access.READ).close());
        assertTrue(refusal.getMessage().contains("the studio of this commission is missing"), refusal.getMessage());
    }

    @Test
    void whatIsBrokenIsToldWithItsLine() throws IOException {
        assertTrue(refused("").contains("commission.saddlebar:1: is not well-formed XML"));
        assertTrue(refused("title").contains(":1: is not well-formed XML"));
        assertTrue(refused(good.substring(0, good.length() / 2)).contains("is not well-formed XML"));
        assertTrue(refused("<svg/>").contains("is not a Saddlebar file"));
        String told = refused(good.replace("title=\"title of the good one\"", "colour=\"red\""));
        assertTrue(told.contains("colour"), told);
        told = refused(good.replace("<papers>", "<gapMm>wide</gapMm><papers>"));
        assertTrue(told.contains("gapMm") && told.matches("(?s).*commission\\.saddlebar:\\d+:.*"), told);
        told = refused(good.replace("commission:Commission ", "commission:Nothing ").replace("/commission:Commission", "/commission:Nothing"));
        assertTrue(told.contains("Nothing"), told);
    }

    @Test
    void anEmfProgramThatKnowsOnlyTheFactoryIsGuardedToo() throws IOException {
        Files.writeString(file, "<?xml version=\"1.0\"?><!DOCTYPE x SYSTEM \"http://localhost:1/x.dtd\">" + good.substring(good.indexOf("?>") + 2));
        ResourceSetImpl set = new ResourceSetImpl();
        set.getResourceFactoryRegistry().getExtensionToFactoryMap().put("saddlebar", new ModelResourceFactory());
        assertThrows(Refusal.class, () -> set.getResource(FolderSet.uri(file.toRealPath()), true));
    }
}
