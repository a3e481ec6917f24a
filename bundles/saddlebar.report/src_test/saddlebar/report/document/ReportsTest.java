package saddlebar.report.document;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeSet;
import java.util.regex.Pattern;

import javax.imageio.ImageIO;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

import saddlebar.model.art.OutlineMm;
import saddlebar.model.commission.Commission;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.Paint;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;

/** Documents of every kind, judged by veraPDF (ISO 19005, ISO 14289), by PDFBox's text and by zbar. */
class ReportsTest {
    private static final CommissionFactory MODEL = CommissionFactory.eINSTANCE;
    private static final Words ENGLISH = Words.in("en").orElseThrow();
    private static final Words GERMAN = Words.in("de").orElseThrow();
    @TempDir
    private Path temp;

    @BeforeAll
    static void validator() {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private static Picture picture() throws IOException {
        BufferedImage image = new BufferedImage(300, 400, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < 400; y++) {
            for (int x = 0; x < 300; x++) {
                image.setRGB(x, y, x * 255 / 300 << 16 | y * 255 / 400 << 8 | 90);
            }
        }
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        ImageIO.write(image, "png", png);
        return new Picture(png.toByteArray(), "image/png", 300, 400, "W01 in the light");
    }

    /** Two windows of 60 pieces each: tables that run over pages. */
    private static ReportMatter matter(ReportKind kind) throws IOException {
        Studio studio = MODEL.createStudio();
        studio.setName("Workshop \u201cNorth Quay\u201d & Daughters");
        studio.setAddress("1 Quay Lane\nTidewater");
        studio.setAccent("#5b2a45");
        Commission commission = MODEL.createCommission();
        commission.setTitle("Library <east>");
        commission.setNumber("26-11");
        commission.setClient(MODEL.createClient());
        commission.getClient().setName("Reading society");
        Paint paint = MODEL.createPaint();
        paint.setName("umber matt");
        paint.setFamily("matt");
        paint.setContainsLead(true);
        paint.setMaturingFromC(610);
        paint.setMaturingToC(670);
        List<Window> windows = new ArrayList<>();
        for (int w = 1; w <= 2; w++) {
            Window window = MODEL.createWindow();
            window.setName("W0" + w);
            window.setTitle("Gr\u00f6\u00dfe " + w);
            Panel panel = MODEL.createPanel();
            window.getPanels().add(panel);
            for (int n = 1; n <= 60; n++) {
                Piece piece = MODEL.createPiece();
                piece.setNumber(n);
                piece.setNet(OutlineMm.rectangle(0, 0, 40 + n, 50));
                piece.setNetAreaMm2((40 + n) * 50.0);
                panel.getPieces().add(piece);
            }
            DesignLayer layer = MODEL.createDesignLayer();
            layer.setName("matt");
            layer.setRole(LayerRole.MATT);
            layer.setPaint(paint);
            panel.getLayers().add(layer);
            windows.add(window);
        }
        ReportMatter.Money money = new ReportMatter.Money("EUR", "26-11-Q01", Optional.of(LocalDate.of(2026, 12, 31)),
                List.of(new ReportMatter.Money.Line("W01", "glass", new BigDecimal("1200.00")),
                        new ReportMatter.Money.Line("", "labour", new BigDecimal("34.56"))),
                new BigDecimal("1234.56"),
                new BigDecimal("234.57"), new BigDecimal("1469.13"), List.of(new ReportMatter.Money.Part("deposit", new BigDecimal("1469.13"))),
                Optional.empty(), Optional.empty());
        LocalDate day = LocalDate.of(2026, 11, 28);
        return new ReportMatter(kind, day, commission, studio, windows, Optional.of(picture()),
                List.of(new ReportMatter.WindowPicture("W01", "Dawn", true, true, picture()),
                        new ReportMatter.WindowPicture("W01", "Dusk", false, false, picture())),
                Optional.of(money),
                List.of(new ReportMatter.PanelPart("W01", "W01", true, 600, 900, 60, 12.3, "two people", List.of(450.0), 31.5)),
                List.of(new ReportMatter.WindowState("W01", "printed", Map.of("printed", 60))),
                List.of(new ReportMatter.Deed(day, "fire", "A", Map.of("firing", "F001", "peak_c", "652"), "")),
                List.of(new ReportMatter.Photo("bench.png", picture())),
                List.of(new ReportMatter.GlassSheet("amber", "G1", false, 500, 800, List.of("W01/1", "W01/2"), 0.4)),
                Optional.of(new ReportMatter.Remake("W01/12", List.of(List.of("Glass", "amber")),
                        List.of(new ReportMatter.Remake.ThenAndNow("matt", "lpi", "40", "45")), Optional.empty())),
                List.of(new ReportMatter.DefectFound("W01/12", "matt", "thin", "light", day, "A", "at the light", "open",
                        List.of(List.of("pull", "F1", "2026-03-01")), List.of("W01/13"))),
                kind == ReportKind.DOSSIER
                        ? List.of(new ReportMatter.Attachment("pieces.json", "application/json", "Pieces", "{}".getBytes(StandardCharsets.UTF_8)))
                        : List.of());
    }

    private Path written(ReportKind kind, Words words, ReportPaper paper) throws IOException {
        Path file = temp.resolve(kind.word() + "-" + words.language() + "-" + paper + ".pdf");
        Reports.own().writePdf(matter(kind), words, paper, file);
        return file;
    }

    private static List<String> faults(Path file, PDFAFlavour flavour) throws Exception {
        try (InputStream in = Files.newInputStream(file); PDFAParser parser = Foundries.defaultInstance().createParser(in, flavour)) {
            ValidationResult result = Foundries.defaultInstance().createValidator(flavour, false).validate(parser);
            return result.getTestAssertions().stream().map(fault -> fault.getRuleId().getClause() + ": " + fault.getMessage()).distinct().toList();
        }
    }

    @ParameterizedTest
    @EnumSource
    void veraPdfFindsEveryKindConformingAndTagged(ReportKind kind) throws Exception {
        for (Words words : List.of(ENGLISH, GERMAN)) {
            Path file = written(kind, words, ReportPaper.A4);
            assertEquals(List.of(), faults(file, kind == ReportKind.DOSSIER ? PDFAFlavour.PDFA_3_U : PDFAFlavour.PDFA_2_U));
            assertEquals(List.of(), faults(file, PDFAFlavour.PDFUA_1));
        }
    }

    @ParameterizedTest
    @EnumSource
    void textIsTextFontsAreEmbeddedAndThereAreBookmarks(ReportKind kind) throws Exception {
        try (PDDocument document = Loader.loadPDF(written(kind, GERMAN, ReportPaper.LETTER).toFile())) {
            assertEquals(215.9, document.getPage(0).getMediaBox().getWidth() * 25.4 / 72, 0.1);
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("Library <east>") && text.contains("Workshop \u201cNorth Quay\u201d & Daughters"), text);
            assertTrue(text.contains(GERMAN.of("kind." + kind.word())), text);
            assertTrue(document.getDocumentCatalog().getDocumentOutline().hasChildren());
            assertEquals("de", document.getDocumentCatalog().getLanguage());
            document.getPages().forEach(page -> page.getResources().getFontNames().forEach(name -> {
                try {
                    assertTrue(page.getResources().getFont(name).isEmbedded(), name.getName());
                } catch (IOException e) {
                    throw new AssertionError(e);
                }
            }));
        }
    }

    @Test
    void headsOfTablesStandAgainOnEveryPage() throws Exception {
        try (PDDocument document = Loader.loadPDF(written(ReportKind.WORKSHOP, ENGLISH, ReportPaper.A4).toFile())) {
            int pages = 0;
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                String text = stripper.getText(document);
                if (text.contains("\u00d7 50 mm")) {
                    pages++;
                    assertTrue(Pattern.compile("Piece\\s+Glass\\s+Size").matcher(text).find(), "page " + page + " has rows without their head");
                }
            }
            assertTrue(pages >= 3, pages + " pages of rows");
        }
    }

    @Test
    void moneyIsWrittenAsTheLanguageWritesIt() throws Exception {
        try (PDDocument document = Loader.loadPDF(written(ReportKind.PROPOSAL, GERMAN, ReportPaper.A4).toFile())) {
            String text = new PDFTextStripper().getText(document).replace('\u00a0', ' ');
            assertTrue(text.contains("1.469,13 \u20ac") && text.contains("Angebot 26-11-Q01") && text.contains("31. Dezember 2026"), text);
        }
        try (PDDocument document = Loader.loadPDF(written(ReportKind.PROPOSAL, ENGLISH, ReportPaper.A4).toFile())) {
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("\u20ac1,469.13") && text.contains("Dawn, approved"), text);
        }
    }

    @Test
    void theSameMatterGivesTheSameBytes() throws IOException {
        byte[] first = Files.readAllBytes(written(ReportKind.DOSSIER, ENGLISH, ReportPaper.A4));
        assertArrayEquals(first, Files.readAllBytes(written(ReportKind.DOSSIER, ENGLISH, ReportPaper.A4)));
    }

    @Test
    void theDossierCarriesItsData() throws IOException {
        try (PDDocument document = Loader.loadPDF(written(ReportKind.DOSSIER, ENGLISH, ReportPaper.A4).toFile())) {
            assertEquals("{}",
                    new String(document.getDocumentCatalog().getNames().getEmbeddedFiles().getNames().get("pieces.json").getEmbeddedFile().toByteArray(),
                            StandardCharsets.UTF_8));
        }
    }

    /** Each card's code, rendered by poppler at 200 dpi, is read by zbar, which shares no code with the writer. */
    @Test
    void cardsAreReadBackByAnotherReader() throws Exception {
        Assumptions.assumeTrue(Files.isExecutable(Path.of("/usr/bin/zbarimg")) && Files.isExecutable(Path.of("/usr/bin/pdftoppm")),
                "zbarimg or pdftoppm is not installed");
        Path file = written(ReportKind.WORKSHOP, ENGLISH, ReportPaper.A4);
        run("pdftoppm", "-r", "200", "-gray", "-png", file.toString(), temp.resolve("page").toString());
        List<String> words = new ArrayList<>(List.of("zbarimg", "-q", "--raw", "-Sdisable", "-Sqrcode.enable"));
        try (var pages = Files.list(temp)) {
            pages.filter(page -> page.toString().endsWith(".png")).sorted().forEach(page -> words.add(page.toString()));
        }
        Process process = new ProcessBuilder(words).redirectErrorStream(false).start();
        String read = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        TreeSet<String> cards = new TreeSet<>();
        for (String code : read.split("(?m)^(?=" + CardCode.HEAD + ")")) {
            if (!code.isBlank()) {
                CardCode card = CardCode.parse(code).orElseThrow(() -> new AssertionError(code));
                assertEquals("26-11", card.values().get("commission"));
                cards.add(card.values().get("card"));
            }
        }
        assertEquals(new TreeSet<>(List.of("mix", "fire", "glaze")), cards);
    }

    private static void run(String... words) throws Exception {
        Process process = new ProcessBuilder(words).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes());
        assertEquals(0, process.waitFor(), said);
    }

    @Test
    void cardCodesAreReadAsTheyWereWritten() {
        CardCode card = new CardCode(Map.of("card", "pull", "layer", "Gr\u00f6\u00dfe = 3"));
        assertEquals(Optional.of(card), CardCode.parse(card.text()));
        assertEquals(Optional.empty(), CardCode.parse("something else"));
        assertEquals(Optional.empty(), CardCode.parse(CardCode.HEAD + "\nno equals sign"));
        assertThrows(IllegalArgumentException.class, () -> new CardCode(Map.of("card", "two\nlines")));
    }

    @Test
    void mailIsOneFileWithItsPicturesWithin() throws IOException {
        Path file = temp.resolve("p.html");
        Reports.own().writeHtml(matter(ReportKind.PROPOSAL), ENGLISH, file);
        String html = Files.readString(file);
        assertTrue(html.contains("data:image/png;base64,") && html.contains("Library &lt;east&gt;") && !html.contains("<bookmark"), html.substring(0, 500));
        assertFalse(Pattern.compile("(src|href)=\"(?!data:|#)").matcher(html).find(), "nothing is fetched from elsewhere");
    }

    @Test
    void nothingToSayIsRefused() throws IOException {
        ReportMatter full = matter(ReportKind.COMPETITION);
        ReportMatter empty = new ReportMatter(full.kind(), full.day(), full.commission(), full.studio(), List.of(), Optional.empty(), List.of(),
                Optional.empty(), List.of(), List.of(), List.of(),
                List.of(), List.of(), Optional.empty(), List.of(), List.of());
        assertThrows(Refusal.class, () -> Reports.own().writePdf(empty, ENGLISH, ReportPaper.A4, temp.resolve("no.pdf")));
    }

    /** Both languages say the same things with the same values put in. */
    @Test
    void languagesHaveTheSameKeysAndPlaceholders() throws IOException {
        Properties english = texts("words.properties");
        Properties german = texts("words_de.properties");
        assertEquals(new TreeSet<>(english.keySet()), new TreeSet<>(german.keySet()));
        Pattern placeholder = Pattern.compile("\\{(\\d)");
        for (Object key : english.keySet()) {
            assertEquals(new TreeSet<>(placeholder.matcher(english.getProperty((String) key)).results().map(m -> m.group(1)).toList()),
                    new TreeSet<>(placeholder.matcher(german.getProperty((String) key)).results().map(m -> m.group(1)).toList()), (String) key);
        }
    }

    private static Properties texts(String name) throws IOException {
        try (InputStream in = Words.class.getResourceAsStream(name)) {
            Properties texts = new Properties();
            texts.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            return texts;
        }
    }
}
