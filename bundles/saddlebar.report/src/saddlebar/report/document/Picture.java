package saddlebar.report.document;

import saddlebar.model.units.Require;

/**
 * A picture as a file's bytes.
 *
 * @param mime     image/png or image/jpeg
 * @param widthPx  of the picture
 * @param heightPx of the picture
 * @param words    what it shows, for who cannot see it
 */
public record Picture(byte[] bytes, String mime, int widthPx, int heightPx, String words) {
    public Picture {
        Require.text("mime", mime);
        Require.text("words", words);
        Require.within("widthPx", widthPx, 1, 100_000);
        Require.within("heightPx", heightPx, 1, 100_000);
    }
}
