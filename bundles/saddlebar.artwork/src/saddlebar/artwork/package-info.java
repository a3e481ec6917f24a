/**
 * Foreign artwork taken in: drawings and pictures as made by others, delivered as lines in mm, coloured areas in mm, gray in bands at
 * device resolution, and pictures for screens.
 *
 * <p>Way of a file: {@link saddlebar.artwork.ArtworkReaders} looks at its first bytes and picks an {@link saddlebar.artwork.ArtworkReader};
 * that one checks, warns or refuses and gives an {@link saddlebar.artwork.Artwork}. Coordinates are mm of the artwork's page, x right, y
 * down from its top left, after the scale of {@link saddlebar.artwork.ReadSettings}.
 *
 * <p>An artwork is immutable after reading and may be asked from several threads at once. Nothing is ever fetched from a network, no
 * script runs, no file outside the artwork's own folder is opened. Methods with sources: docs/algorithms/artwork.md.
 */
package saddlebar.artwork;
