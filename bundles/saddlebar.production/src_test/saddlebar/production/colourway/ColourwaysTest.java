package saddlebar.production.colourway;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import javax.imageio.ImageIO;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.colour.ColourDifference;
import saddlebar.colour.Srgb;
import saddlebar.materials.cost.BookReader;
import saddlebar.materials.money.Prices;
import saddlebar.model.art.OutlineMm;
import saddlebar.model.commission.Colourway;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.Paint;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.PriceBook;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.NewCommission;
import saddlebar.model.store.RecordLine;
import saddlebar.model.store.RecordReading;
import saddlebar.model.work.Work;
import saddlebar.production.light.ColourShelf;
import saddlebar.production.light.LightBehind;
import saddlebar.production.light.LightLook;

class ColourwaysTest {
    private static final CommissionFactory NEW = CommissionFactory.eINSTANCE;
    private static final LocalDate DAY = LocalDate.of(2026, 3, 4);

    @TempDir
    private Path temp;
    private CommissionFolder folder;
    private Window window;
    private GlassStock amber;
    private GlassStock blue;
    private Piece first;
    private Piece second;

    @BeforeEach
    void twoPanes() throws IOException {
        folder = CommissionFolder.create(temp.resolve("porch"), NewCommission.titled("Porch"));
        PriceBook book = NEW.createPriceBook();
        book.setId("book");
        folder.studio().setPriceBook(book);
        amber = glass("amber", "#dc8a1c", "80");
        blue = glass("river blue", "#3c86b4", "100");
        window = folder.addWindow("W01", "Porch light");
        Panel panel = NEW.createPanel();
        panel.setId("panel");
        panel.setName("P1");
        window.getPanels().add(panel);
        panel.setOutline(OutlineMm.rectangle(0, 0, 200, 100));
        first = piece(panel, 1, 0);
        second = piece(panel, 2, 100);
    }

    @AfterEach
    void close() throws IOException {
        folder.close();
    }

    private GlassStock glass(String name, String colour, String price) {
        GlassStock stock = NEW.createGlassStock();
        stock.setId(name);
        stock.setName(name);
        stock.setColour(colour);
        stock.setPricePerM2(new BigDecimal(price));
        folder.studio().getGlass().add(stock);
        return stock;
    }

    private static Piece piece(Panel panel, int number, double x) {
        Piece piece = NEW.createPiece();
        piece.setId("p" + number);
        piece.setNumber(number);
        piece.setFace(OutlineMm.rectangle(x, 0, 100, 100));
        piece.setNet(OutlineMm.rectangle(x, 0, 100, 100));
        piece.setNetAreaMm2(10_000);
        piece.setLabelXMm(x + 50);
        piece.setLabelYMm(50);
        piece.setInradiusMm(40);
        panel.getPieces().add(piece);
        return piece;
    }

    private Prices prices() {
        return BookReader.read(folder.studio(), DAY, folder.studio().getCurrency());
    }

    private List<RecordLine> records() throws IOException {
        try (RecordReading reading = folder.records().read()) {
            return reading.toList();
        }
    }

    @Test
    void oneIsMadeCopiedChangedRenamedAndDeleted() {
        Colourway spring = Colourways.create(window, "Spring");
        assertSame(spring, window.getChosen(), "the first one is made");
        Colourways.cut(spring, List.of(first, second), Optional.of(amber));
        Colourway other = Colourways.copy(spring, "Autumn");
        Colourways.cut(other, List.of(second), Optional.of(blue));
        assertEquals(amber, Colourways.glass(first, other).orElseThrow());
        assertEquals(blue, Colourways.glass(second, other).orElseThrow());
        assertEquals(amber, Colourways.glass(second, spring).orElseThrow(), "the copy is its own");
        Colourways.rename(other, " Late autumn ");
        assertSame(other, Colourways.named(window, "LATE AUTUMN"));
        Colourways.delete(spring);
        assertSame(other, window.getChosen());
        assertEquals(1, first.getChoices().size());
    }

    @Test
    void namesAreWantedFreeAndPlain() {
        Colourways.create(window, "Spring");
        for (String bad : new String[] {"", "  ", "spring", "a\nb", "x".repeat(81)}) {
            assertThrows(Refusal.class, () -> Colourways.create(window, bad), bad);
        }
        assertThrows(Refusal.class, () -> Colourways.named(window, "Winter"));
    }

    @Test
    void withoutAChoiceThePiecesUsualGlassCounts() {
        Colourway spring = Colourways.create(window, "Spring");
        first.setGlass(blue);
        Colourways.cut(spring, List.of(first), Optional.of(amber));
        Colourways.cut(spring, List.of(first), Optional.empty());
        assertEquals(blue, Colourways.glass(first, spring).orElseThrow());
        assertTrue(spring.getChoices().isEmpty());
    }

    /** CIEDE2000 of the two colours themselves, and areas over the usual yield of 0.6 times the prices, by hand. */
    @Test
    void twoAreComparedByColourAndCost() {
        Colourway warm = Colourways.create(window, "Warm");
        Colourways.cut(warm, List.of(first, second), Optional.of(amber));
        Colourway cold = Colourways.copy(warm, "Cold");
        Colourways.cut(cold, List.of(second), Optional.of(blue));
        ColourwayComparison comparison = ColourwayComparison.of(warm, cold, LightBehind.NORTH, new ColourShelf(), prices());
        assertEquals(1, comparison.differing());
        double expected = ColourDifference.ciede2000(Srgb.parse("#dc8a1c").orElseThrow().lab(), Srgb.parse("#3c86b4").orElseThrow().lab());
        assertEquals(expected, comparison.pieces().get(1).deltaE2000().orElseThrow(), 0.05);
        assertEquals(0, comparison.pieces().get(0).deltaE2000().orElseThrow(), 1e-9);
        assertEquals(new BigDecimal("2.67"), comparison.cost().amount().orElseThrow()); // 0.02 m2 / 0.6 * 80
        assertEquals(new BigDecimal("3.00"), comparison.other().amount().orElseThrow()); // 0.01 / 0.6 * 80 = 1.33, * 100 = 1.67
        assertEquals(new BigDecimal("0.33"), comparison.costsMore().orElseThrow());
    }

    @Test
    void aGlassWithoutAPriceLeavesTheCostOpenWithItsReason() {
        amber.setPricePerM2(null);
        Colourway warm = Colourways.create(window, "Warm");
        Colourways.cut(warm, List.of(first), Optional.of(amber));
        var bill = ColourwayComparison.bill(warm, prices());
        assertTrue(bill.amount().isEmpty());
        assertTrue(bill.why().contains("amber"), bill.why());
        assertEquals(1, bill.withoutGlass());
    }

    @Test
    void anApprovedOneIsFrozenWithNameDayAndRecord() throws IOException {
        Colourway warm = Colourways.create(window, "Warm");
        Colourways.create(window, "Cold");
        Refusal bare = assertThrows(Refusal.class, () -> ColourwayApproval.approve(folder, warm, "Rowan Alder", DAY));
        assertTrue(bare.getMessage().contains("1, 2"), bare.getMessage());
        first.setGlass(blue);
        Colourways.cut(warm, List.of(second), Optional.of(amber));
        assertThrows(Refusal.class, () -> ColourwayApproval.approve(folder, warm, " ", DAY));
        ColourwayApproval.approve(folder, warm, " Rowan Alder ", DAY);
        assertEquals(DAY, warm.getApprovedOn());
        first.setGlass(amber);
        assertEquals(blue, Colourways.glass(first, warm).orElseThrow(), "what was agreed to is written out");
        for (Runnable change : List.<Runnable>of(() -> Colourways.cut(warm, List.of(first), Optional.of(amber)), () -> Colourways.rename(warm, "Other"),
                () -> Colourways.delete(warm))) {
            Refusal frozen = assertThrows(Refusal.class, change::run);
            assertTrue(frozen.getMessage().contains("2026-03-04"), frozen.getMessage());
        }
        assertThrows(Refusal.class, () -> ColourwayApproval.approve(folder, Colourways.named(window, "Cold"), "Rowan Alder", DAY), "one a window");
        RecordLine record = records().stream().filter(line -> line.kind().equals("approve")).findFirst().orElseThrow();
        assertEquals("Rowan Alder", record.settings().get("approvedBy"));
        assertEquals(2, ((List<?>) record.settings().get("glass")).size());
        assertEquals("river blue", ((Map<?, ?>) ((List<?>) record.settings().get("glass")).get(0)).get("glass"));
        assertFalse(Colourways.copy(warm, "Warmer").isApproved());
        folder.close();
        folder = CommissionFolder.open(temp.resolve("porch"), Access.WRITE);
        Colourway again = Colourways.named(folder.window("W01").orElseThrow(), "Warm");
        assertEquals("Rowan Alder", ColourwayApproval.of(again, folder.commission()).orElseThrow().getBy());
    }

    @Test
    void anApprovalIsWithdrawnByARecordThatSupersedesIt() throws IOException {
        Colourway warm = Colourways.create(window, "Warm");
        Colourways.cut(warm, List.of(first, second), Optional.of(amber));
        assertThrows(Refusal.class, () -> ColourwayApproval.withdraw(folder, warm, "Rowan Alder", DAY, ""));
        ColourwayApproval.approve(folder, warm, "Rowan Alder", DAY);
        String approved = records().get(records().size() - 1).id();
        ColourwayApproval.withdraw(folder, warm, "Rowan Alder", DAY.plusDays(2), "wants it bluer");
        RecordLine last = records().get(records().size() - 1);
        assertEquals(List.of(approved), last.supersedes());
        assertEquals("wants it bluer", last.note());
        assertNull(warm.getApprovedOn());
        assertTrue(folder.commission().getApprovals().isEmpty());
        Colourways.cut(warm, List.of(first), Optional.of(blue));
    }

    @Test
    void thePaintOfAWindowWithAnApprovedColourwayStays() throws IOException {
        DesignLayer layer = NEW.createDesignLayer();
        layer.setId("l");
        layer.setName("matt");
        layer.setRole(LayerRole.MATT);
        window.getPanels().get(0).getLayers().add(layer);
        Paint umber = NEW.createPaint();
        umber.setId("umber");
        folder.studio().getPaints().add(umber);
        Colourways.paint(layer, Optional.of(umber));
        assertSame(umber, layer.getPaint());
        Colourway warm = Colourways.create(window, "Warm");
        Colourways.cut(warm, List.of(first, second), Optional.of(amber));
        ColourwayApproval.approve(folder, warm, "Rowan Alder", DAY);
        assertThrows(Refusal.class, () -> Colourways.paint(layer, Optional.empty()));
    }

    @Test
    void theVidimusShowsTheGlassAndSaysWhatItIs() throws IOException {
        Colourway warm = Colourways.create(window, "Warm");
        Colourways.cut(warm, List.of(first), Optional.of(amber));
        Colourways.cut(warm, List.of(second), Optional.of(blue));
        VidimusOrder order = VidimusOrder.of(folder.path(), folder.commission(), window, Optional.of(warm), LightLook.USUAL, 400);
        try (Vidimus vidimus = new Vidimus()) {
            BufferedImage plain = vidimus.picture(order, Work.UNWATCHED);
            assertEquals(400, plain.getWidth());
            assertEquals(200, plain.getHeight());
            assertEquals(0xdc8a1c, plain.getRGB(100, 100) & 0xFFFFFF);
            assertEquals(0x3c86b4, plain.getRGB(300, 100) & 0xFFFFFF);
            BufferedImage page = vidimus.captioned(order, VidimusWords.ENGLISH, Work.UNWATCHED);
            assertTrue(page.getHeight() > 300 && page.getWidth() >= 400);
            Path file = Vidimus.write(page, temp.resolve("v.png"), "W01 Warm", false);
            assertEquals(page.getRGB(page.getWidth() / 2, 60), ImageIO.read(file.toFile()).getRGB(page.getWidth() / 2, 60));
            byte[] once = Files.readAllBytes(file);
            Vidimus.write(vidimus.captioned(order, VidimusWords.ENGLISH, Work.UNWATCHED), file, "W01 Warm", true);
            assertEquals(-1, java.util.Arrays.mismatch(once, Files.readAllBytes(file)), "same order, same bytes");
        }
    }

    @Test
    void withoutArtworkThereIsNothingToShow() throws IOException {
        Window empty = folder.addWindow("W02", "");
        VidimusOrder order = VidimusOrder.of(folder.path(), folder.commission(), empty, Optional.empty(), LightLook.USUAL, 400);
        try (Vidimus vidimus = new Vidimus()) {
            assertThrows(Refusal.class, () -> vidimus.picture(order, Work.UNWATCHED));
        }
    }
}
