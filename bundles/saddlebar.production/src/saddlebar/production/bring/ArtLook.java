package saddlebar.production.bring;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Objects;

/**
 * What an art file shows before it is brought.
 *
 * @param pages    how many the file has
 * @param page     which one this is, from 1
 * @param widthMm  of its page, as the file says
 * @param heightMm of its page
 * @param layers   what each layer may be for
 * @param preview  the page, small, on a clear ground
 */
public record ArtLook(int pages, int page, double widthMm, double heightMm, List<LayerPurpose> layers, BufferedImage preview) {
    public ArtLook {
        layers = List.copyOf(layers);
        Objects.requireNonNull(preview, "preview");
    }
}
