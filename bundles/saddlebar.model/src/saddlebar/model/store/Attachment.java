package saddlebar.model.store;

/**
 * A file that a record holds on to, in the folder {@code photos}. Its name is its content's hash, so that the same photo is there once and a changed one shows.
 *
 * @param file   path relative to the commission
 * @param sha256 of its content
 */
public record Attachment(String file, String sha256) {
}
