package saddlebar.production.bring;

import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

import saddlebar.artwork.ReadSettings;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.units.Require;

/**
 * What is brought, and to where.
 *
 * @param art     the file
 * @param size    how large it is in glass, and which page of the file
 * @param window  name of the window, made if it is not there
 * @param title   title for a new window, empty to take it from the file's name
 * @param panel   name of the panel, empty for the one of a window that has but one
 * @param roles   names of artwork layers by what they are for; empty: as at the last bringing, else guessed from their names and what is drawn
 * @param glass   artwork layers that show a colourway's glass, each with the colourway's name
 * @param unused  artwork layers that are for nothing here
 * @param confirmed whether somebody said what the layers are for, so that it is remembered and no layer is guessed again
 */
public record BringRequest(Path art, ReadSettings size, String window, String title, String panel, Map<LayerRole, String> roles,
        Map<String, String> glass, Set<String> unused, boolean confirmed) {
    public BringRequest {
        Objects.requireNonNull(art, "art");
        Objects.requireNonNull(size, "size");
        Require.text("window", window);
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(panel, "panel");
        roles = Collections.unmodifiableMap(new LinkedHashMap<>(roles));
        glass = Collections.unmodifiableMap(new LinkedHashMap<>(glass));
        unused = Collections.unmodifiableSet(new LinkedHashSet<>(unused));
    }

    /** As a person left the layers; where there are none, as they are guessed. */
    public static BringRequest settled(Path art, ReadSettings size, String window, String title, String panel, List<LayerPurpose> layers) {
        Map<LayerRole, String> roles = new LinkedHashMap<>();
        Map<String, String> glass = new LinkedHashMap<>();
        Set<String> unused = new LinkedHashSet<>();
        for (LayerPurpose layer : layers) {
            if (layer.purpose().equals(LayerPurpose.NONE)) {
                unused.add(layer.id());
            } else if (layer.purpose().equals(LayerPurpose.GLASS)) {
                glass.put(layer.colourway(), layer.id());
            } else {
                roles.put(LayerRole.get(layer.purpose()), layer.id());
            }
        }
        return new BringRequest(art, size, window, title, panel, roles, glass, unused, !layers.isEmpty());
    }

    /** Roles that are given are meant; else they are guessed. */
    public BringRequest(Path art, ReadSettings size, String window, String title, String panel, Map<LayerRole, String> roles, Map<String, String> glass) {
        this(art, size, window, title, panel, roles, glass, Set.of(), !roles.isEmpty());
    }
}
