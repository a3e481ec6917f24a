package saddlebar.model.store;

/**
 * A copy of an artwork file in the commission.
 *
 * @param file         path relative to the commission's folder
 * @param originalName name of the file that was brought
 * @param sha256       of its bytes
 * @param revision     1 for the first of that name, then 2, 3, …
 * @param isNew        false if this very file had been brought before
 */
public record BroughtArtwork(String file, String originalName, String sha256, int revision, boolean isNew) {
}
