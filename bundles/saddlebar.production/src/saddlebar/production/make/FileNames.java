package saddlebar.production.make;

import java.text.Normalizer;

/** Names that every file system takes, made of what people call a thing. */
final class FileNames {
    private FileNames() {
    }

    static String of(String label) {
        String plain = Normalizer.normalize(label, Normalizer.Form.NFKD).replaceAll("\\p{M}", "");
        String name = plain.replaceAll("[^A-Za-z0-9._-]+", "-").replaceAll("^[-.]+|[-.]+$", "");
        String kept = name.isEmpty() ? "unnamed" : name;
        return kept.length() > 80 ? kept.substring(0, 80) : kept;
    }
}
