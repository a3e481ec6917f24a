package saddlebar.production.make;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.artwork.ArtworkReaders;
import saddlebar.artwork.LayerGuess;
import saddlebar.artwork.ReadSettings;
import saddlebar.model.commission.ArtworkReference;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.work.Work;
import saddlebar.production.bring.ArtLook;
import saddlebar.production.bring.BringRequest;
import saddlebar.production.bring.Bringing;
import saddlebar.production.bring.Brought;
import saddlebar.production.bring.LayerPurpose;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.process.StencilProcesses;

/** What layers are for, guessed, said and remembered; and the page of a file of several. */
class BringRolesTest {
    private static final String PAGE = "<svg xmlns='http://www.w3.org/2000/svg' width='80mm' height='50mm' viewBox='0 0 80 50'>";
    private static final String LINES = "<path d='M0 0H80V50H0zM40 0V50' fill='none' stroke='#000' stroke-width='.4'/>";
    private static final String TONES = "<rect x='45' y='5' width='30' height='40' fill='#888'/>";
    private static final String BLACK = "<path d='M5 10H75' fill='none' stroke='#000' stroke-width='3'/>";
    private static final String GLASS = "<rect width='40' height='50' fill='#47c'/><rect x='40' width='40' height='50' fill='#c64'/>";
    private static final String LETTERS = "<text x='5' y='40' font-size='6'>SALT</text>";

    @TempDir
    Path folder;

    private final Bringing bringing = new Bringing(ArtworkReaders.ownReaders(),
            new Making(ArtworkReaders.ownReaders(), ScreeningMethods.ownMethods(), StencilProcesses.ownProcesses()));

    private static String group(String id, String content) {
        return "<g id='" + id + "'>" + content + "</g>";
    }

    private Path svg(String... groups) throws IOException {
        return Files.writeString(folder.resolve("art.svg"), PAGE + String.join("", groups) + "</svg>");
    }

    private Brought bring(WorkBench bench, BringRequest request) throws IOException {
        try (CommissionFolder open = CommissionFolder.open(bench.folder, Access.WRITE)) {
            Brought brought = bringing.bring(open, request, Work.UNWATCHED);
            open.save();
            return brought;
        }
    }

    private static BringRequest plain(Path art) {
        return new BringRequest(art, ReadSettings.asDrawn(), "W01", "", "", Map.of(), Map.of());
    }

    private static Map<String, String> purposes(List<LayerPurpose> all) {
        return all.stream().collect(Collectors.toMap(LayerPurpose::label, LayerPurpose::purpose));
    }

    private static LayerPurpose of(List<LayerPurpose> all, String label) {
        return all.stream().filter(one -> one.label().equals(label)).findFirst().orElseThrow();
    }

    @Test
    void guessedFromWhatIsDrawn() throws IOException {
        WorkBench bench = new WorkBench(folder);
        List<LayerPurpose> all = bring(bench, plain(svg(group("a", GLASS), group("b", TONES), group("c", BLACK), group("d", LINES), group("e", LETTERS))))
                .roles();
        assertEquals(Map.of("a", "glass", "b", "matt", "c", "trace", "d", "cutline", "e", "lettering"), purposes(all));
        assertEquals(LayerGuess.Ground.CLOSED_HAIRLINES, of(all, "d").ground());
        assertTrue(of(all, "d").why().contains("their ends meet"));
        assertTrue(all.stream().allMatch(one -> one.source() == LayerPurpose.Source.GUESSED));
    }

    @Test
    void loneLinesAreNotTheCutlineWhereOthersMeet() throws IOException {
        WorkBench bench = new WorkBench(folder);
        String loose = "<path d='M5 5H30M5 15H30M5 25H30' fill='none' stroke='#000' stroke-width='.4'/>";
        List<LayerPurpose> all = bring(bench, plain(svg(group("hatching here", loose), group("b", LINES)))).roles();
        assertEquals(Map.of("hatching here", "trace", "b", "cutline"), purposes(all));
    }

    @Test
    void aNameGoesBeforeALook() throws IOException {
        WorkBench bench = new WorkBench(folder);
        List<LayerPurpose> all = bring(bench, plain(svg(group("trace", LINES), group("leadlines", LINES)))).roles();
        assertEquals(Map.of("trace", "trace", "leadlines", "cutline"), purposes(all));
        assertEquals(LayerGuess.Ground.NAME, of(all, "trace").ground());
    }

    @Test
    void saidOnceAndRemembered() throws IOException {
        WorkBench bench = new WorkBench(folder);
        Brought first = bring(bench,
                new BringRequest(svg(group("one", BLACK), group("two", LINES), group("three", TONES)), ReadSettings.asDrawn(), "W01", "", "",
                        Map.of(LayerRole.CUTLINE, "two", LayerRole.MATT, "one"), Map.of(), Set.of("three"), true));
        assertEquals(Map.of("one", "matt", "two", "cutline", "three", "none"), purposes(first.roles()));
        Brought second = bring(bench, plain(svg(group("one", BLACK + BLACK), group("two", LINES), group("three", TONES), group("four", LETTERS))));
        assertEquals(Map.of("one", "matt", "two", "cutline", "three", "none", "four", "lettering"), purposes(second.roles()));
        assertEquals(LayerPurpose.Source.REMEMBERED, of(second.roles(), "one").source());
        assertEquals(LayerPurpose.Source.REMEMBERED, of(second.roles(), "three").source());
        assertTrue(second.problems().stream().anyMatch(problem -> problem.code().equals("layer-new") && problem.message().contains("four")));
        Brought third = bring(bench, plain(svg(group("two", LINES), group("three", TONES))));
        assertTrue(third.problems().stream().anyMatch(problem -> problem.code().equals("layer-gone") && problem.message().contains("one")));
        assertFalse(third.layers().stream().anyMatch(layer -> layer.contains("three")));
    }

    @Test
    void lookedAtBeforeItIsBrought() throws IOException {
        Path art = svg(group("b", TONES), group("d", LINES));
        ArtLook look = bringing.look(art, Optional.empty(), 1, 160);
        assertEquals(List.of(1, 1, 160, 100), List.of(look.pages(), look.page(), look.preview().getWidth(), look.preview().getHeight()));
        assertEquals(Map.of("b", "matt", "d", "cutline"), purposes(look.layers()));
    }

    /** Three pages, each with another number of panes side by side on one layer, written out by hand (ISO 32000-1, 7.5). */
    private Path pages() throws IOException {
        List<String> objects = new ArrayList<>();
        objects.add("<< /Type /Catalog /Pages 2 0 R /OCProperties << /OCGs [3 0 R] /D << /ON [3 0 R] >> >> >>");
        objects.add("<< /Type /Pages /Count 3 /Kids [4 0 R 6 0 R 8 0 R] >>");
        objects.add("<< /Type /OCG /Name (Cutline) >>");
        for (int panes = 1; panes <= 3; panes++) {
            StringBuilder content = new StringBuilder("/OC /cut BDC 0 0 300 200 re");
            for (int i = 1; i < panes; i++) {
                content.append(" ").append(300 * i / panes).append(" 0 m ").append(300 * i / panes).append(" 200 l");
            }
            content.append(" S EMC");
            objects.add("<< /Type /Page /Parent 2 0 R /MediaBox [0 0 300 200] /Resources << /Properties << /cut 3 0 R >> >> /Contents " + (objects.size() + 2)
                    + " 0 R >>");
            objects.add("<< /Length " + content.length() + " >>\nstream\n" + content + "\nendstream");
        }
        StringBuilder pdf = new StringBuilder("%PDF-1.6\n");
        StringBuilder table = new StringBuilder("0000000000 65535 f \n");
        for (int i = 0; i < objects.size(); i++) {
            table.append(String.format(java.util.Locale.ROOT, "%010d 00000 n \n", pdf.length()));
            pdf.append(i + 1).append(" 0 obj\n").append(objects.get(i)).append("\nendobj\n");
        }
        int start = pdf.length();
        pdf.append("xref\n0 ").append(objects.size() + 1).append("\n").append(table).append("trailer\n<< /Size ").append(objects.size() + 1)
                .append(" /Root 1 0 R >>\nstartxref\n").append(start).append("\n%%EOF\n");
        return Files.writeString(folder.resolve("pages.pdf"), pdf);
    }

    @Test
    void thePageIsTakenRememberedAndMade() throws IOException {
        WorkBench bench = new WorkBench(folder);
        Path art = pages();
        Brought brought = bring(bench, new BringRequest(art, ReadSettings.asDrawn().onPage(3), "W01", "", "", Map.of(), Map.of()));
        assertEquals(3, brought.pieces());
        bench.look(open -> {
            ArtworkReference reference = open.window("W01").orElseThrow().getPanels().get(0).getArtwork().get(0);
            assertEquals(3, reference.getPage());
            assertEquals(3, bringing.lastPage(open, "W01", ""));
            assertEquals(3, bringing.look(art, Optional.of(reference), 2, 100).pages());
        });
        bench.make();
        Brought other = bring(bench, new BringRequest(art, ReadSettings.asDrawn().onPage(2), "W01", "", "", Map.of(), Map.of()));
        assertEquals(List.of(2, 2), List.of(other.pieces(), other.revision()));
        Refusal refusal = assertThrows(Refusal.class,
                () -> bring(bench, new BringRequest(art, ReadSettings.asDrawn().onPage(4), "W01", "", "", Map.of(), Map.of())));
        assertEquals("pages.pdf: it has no page 4 but 3 pages; name one of them", refusal.getMessage());
    }
}
