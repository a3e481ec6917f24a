package saddlebar.report.document;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

import javax.imageio.ImageIO;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;

/**
 * What a card's QR code (ISO/IEC 18004) says: lines of text that any phone shows, of which the first says what they are and the others are
 * {@code key=value}. Such as {@code card=pull}, {@code window=W01}, {@code layer=matt}.
 */
public record CardCode(Map<String, String> values) {
    /** First line. */
    public static final String HEAD = "Saddlebar card 1";
    private static final int PX_A_MODULE = 6;

    public CardCode {
        values = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(values));
        values.forEach((key, value) -> {
            if (!key.matches("[a-z-]+") || value.contains("\n")) {
                throw new IllegalArgumentException("a card's code takes no '" + key + "=" + value + "'");
            }
        });
    }

    public String text() {
        StringBuilder text = new StringBuilder(HEAD);
        values.forEach((key, value) -> text.append('\n').append(key).append('=').append(value));
        return text.toString();
    }

    /** Empty if the text is no card's. */
    public static Optional<CardCode> parse(String text) {
        String[] lines = text.strip().split("\\R");
        if (!lines[0].equals(HEAD)) {
            return Optional.empty();
        }
        Map<String, String> values = new LinkedHashMap<>();
        for (int i = 1; i < lines.length; i++) {
            int at = lines[i].indexOf('=');
            if (at < 1 || !lines[i].substring(0, at).matches("[a-z-]+")) {
                return Optional.empty();
            }
            values.put(lines[i].substring(0, at), lines[i].substring(at + 1));
        }
        return Optional.of(new CardCode(values));
    }

    /** As a picture; a quarter of it may be spoilt (level Q), since cards lie on benches. */
    public Picture picture() {
        try {
            BitMatrix bits = new QRCodeWriter().encode(text(), BarcodeFormat.QR_CODE, 0, 0,
                    Map.of(EncodeHintType.CHARACTER_SET, "UTF-8", EncodeHintType.ERROR_CORRECTION, ErrorCorrectionLevel.Q, EncodeHintType.MARGIN, 2));
            BufferedImage image = new BufferedImage(bits.getWidth() * PX_A_MODULE, bits.getHeight() * PX_A_MODULE, BufferedImage.TYPE_BYTE_BINARY);
            for (int y = 0; y < image.getHeight(); y++) {
                for (int x = 0; x < image.getWidth(); x++) {
                    image.setRGB(x, y, bits.get(x / PX_A_MODULE, y / PX_A_MODULE) ? 0xFF000000 : 0xFFFFFFFF);
                }
            }
            ByteArrayOutputStream png = new ByteArrayOutputStream();
            ImageIO.write(image, "png", png);
            return new Picture(png.toByteArray(), "image/png", image.getWidth(), image.getHeight(), text().replace('\n', ' '));
        } catch (WriterException | IOException e) {
            throw new UncheckedIOException(new IOException("a card's code of " + text().length() + " letters", e));
        }
    }
}
