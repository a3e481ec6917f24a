package saddlebar.report.document;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.TreeMap;

import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.util.XRLog;

import saddlebar.model.file.Hashes;
import saddlebar.model.file.PendingFile;

/**
 * Sets a document's HTML as PDF/A-2u (ISO 19005-2), or as PDF/A-3u with files attached: tagged, with bookmarks, real text, and Lato (SIL Open Font License)
 * embedded. Pictures and styles come from the HTML alone; nothing is fetched. The same HTML and day give the same bytes.
 */
final class ReportPdf {
    private static final String PRODUCER = "Saddlebar 1";

    private ReportPdf() {
    }

    static void write(String html, LocalDate day, List<ReportMatter.Attachment> attachments, Path target) throws IOException {
        XRLog.setLoggingEnabled(false);
        try (PendingFile pending = PendingFile.beside(target); PDDocument document = new PDDocument()) {
            List<TrueTypeFont> fonts = new ArrayList<>();
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.useFastMode();
            builder.usePDDocument(document);
            builder.usePdfUaAccessibility(true);
            builder.usePdfAConformance(attachments.isEmpty() ? PdfAConformance.PDFA_2_U : PdfAConformance.PDFA_3_U);
            builder.useColorProfile(ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData());
            builder.useFont(new PDFontSupplier(font(document, "Regular", fonts)), "Lato", 400, FontStyle.NORMAL, true);
            builder.useFont(new PDFontSupplier(font(document, "Bold", fonts)), "Lato", 700, FontStyle.NORMAL, true);
            builder.useFont(new PDFontSupplier(font(document, "Italic", fonts)), "Lato", 400, FontStyle.ITALIC, true);
            builder.useUriResolver((base, uri) -> uri.startsWith("data:") ? uri : null); // nothing from outside
            builder.withProducer(PRODUCER);
            builder.withHtmlContent(html, null);
            try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
                renderer.layout();
                renderer.createPDFWithoutClosing();
                date(document, day);
                attach(document, attachments);
                document.setDocumentId(Long.parseUnsignedLong(Hashes.sha256(html + day + PRODUCER).substring(0, 16), 16));
                document.save(pending.out(), CompressParameters.DEFAULT_COMPRESSION);
            }
            for (TrueTypeFont font : fonts) {
                font.close();
            }
            pending.commit();
        }
    }

    /** Without substitution of glyphs: a ligature has no letter of its own, and PDF/A wants one for each. */
    private static PDFont font(PDDocument document, String cut, List<TrueTypeFont> open) throws IOException {
        try (InputStream file = ReportPdf.class.getResourceAsStream("Lato-" + cut + ".ttf")) {
            TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(file.readAllBytes()));
            font.setEnableGsub(false);
            open.add(font);
            return PDType0Font.load(document, font, true);
        }
    }

    /** The document's day in place of the clock's, in both places that must agree. */
    private static void date(PDDocument document, LocalDate day) throws IOException {
        Calendar midnight = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
        midnight.clear();
        midnight.set(day.getYear(), day.getMonthValue() - 1, day.getDayOfMonth());
        document.getDocumentInformation().setCreationDate(midnight);
        PDMetadata metadata = document.getDocumentCatalog().getMetadata();
        String xmp;
        try (InputStream in = metadata.exportXMPMetadata()) {
            xmp = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        xmp = xmp.replaceAll("<xmp:CreateDate>[^<]*</xmp:CreateDate>", "<xmp:CreateDate>" + day + "T00:00:00+00:00</xmp:CreateDate>");
        document.getDocumentCatalog().setMetadata(new PDMetadata(document, new ByteArrayInputStream(xmp.getBytes(StandardCharsets.UTF_8))));
    }

    private static void attach(PDDocument document, List<ReportMatter.Attachment> attachments) throws IOException {
        if (attachments.isEmpty()) {
            return;
        }
        Map<String, PDComplexFileSpecification> names = new TreeMap<>();
        COSArray all = new COSArray();
        for (ReportMatter.Attachment attachment : attachments) {
            PDEmbeddedFile file = new PDEmbeddedFile(document, new ByteArrayInputStream(attachment.bytes()), COSName.FLATE_DECODE);
            file.setSubtype(attachment.mime());
            file.setSize(attachment.bytes().length);
            file.setModDate(document.getDocumentInformation().getCreationDate());
            PDComplexFileSpecification specification = new PDComplexFileSpecification();
            specification.setFile(attachment.name());
            specification.setFileUnicode(attachment.name());
            specification.setFileDescription(attachment.words());
            specification.setEmbeddedFile(file);
            specification.setEmbeddedFileUnicode(file);
            specification.getCOSObject().setItem(COSName.getPDFName("AFRelationship"), COSName.getPDFName("Data"));
            names.put(attachment.name(), specification);
            all.add(specification);
        }
        PDEmbeddedFilesNameTreeNode tree = new PDEmbeddedFilesNameTreeNode();
        tree.setNames(names);
        PDDocumentNameDictionary dictionary = new PDDocumentNameDictionary(document.getDocumentCatalog());
        dictionary.setEmbeddedFiles(tree);
        document.getDocumentCatalog().setNames(dictionary);
        document.getDocumentCatalog().getCOSObject().setItem(COSName.getPDFName("AF"), all);
    }
}
