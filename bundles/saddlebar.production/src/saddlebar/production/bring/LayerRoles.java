package saddlebar.production.bring;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

import saddlebar.artwork.ArtLayer;
import saddlebar.artwork.Artwork;
import saddlebar.artwork.LayerHint;
import saddlebar.model.commission.ArtworkReference;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.RoleAssignment;
import saddlebar.model.problem.Refusal;

/** What each layer of an artwork is for: as the person said, else as at the last bringing, else as its name suggests. */
record LayerRoles(Map<LayerRole, String> painted, Map<String, String> glass, String cutline) {

    static LayerRoles of(BringRequest request, Artwork artwork, Optional<ArtworkReference> last) {
        Map<LayerRole, String> roles = new LinkedHashMap<>();
        if (!request.roles().isEmpty()) {
            request.roles().forEach((role, name) -> roles.put(role, artwork.chosenLayer(name).id()));
        } else {
            last.ifPresent(reference -> reference.getRoles().stream().filter(role -> artwork.layer(role.getArtLayer()).isPresent())
                    .forEach((RoleAssignment role) -> roles.put(role.getRole(), role.getArtLayer())));
            for (ArtLayer layer : artwork.layers()) {
                role(layer.hint()).ifPresent(role -> roles.putIfAbsent(role, layer.id()));
            }
        }
        artwork.cutlineLayer().ifPresent(layer -> roles.putIfAbsent(LayerRole.CUTLINE, layer.id()));
        String cutline = roles.remove(LayerRole.CUTLINE);
        if (cutline == null) {
            throw new Refusal(artwork.file().getFileName().toString(), "no layer looks like the cutline",
                    "name it with its role, for instance cutline=NAME; there are "
                            + String.join(", ", artwork.layers().stream().map(ArtLayer::label).toList()));
        }
        return new LayerRoles(roles, glass(request, artwork), cutline);
    }

    private static Map<String, String> glass(BringRequest request, Artwork artwork) {
        Map<String, String> glass = new LinkedHashMap<>();
        if (!request.glass().isEmpty()) {
            request.glass().forEach((name, layer) -> glass.put(name, artwork.chosenLayer(layer).id()));
            return glass;
        }
        for (ArtLayer layer : artwork.layers()) {
            if (layer.hint() == LayerHint.GLASS) {
                glass.put(colourway(layer), layer.id());
            }
        }
        return glass;
    }

    /** {@code Glass: Spring tide} is the colourway Spring tide. */
    private static String colourway(ArtLayer layer) {
        String name = layer.label().replaceFirst("(?i)^glass\\s*[:-]?\\s*", "").strip();
        return name.isEmpty() ? "As drawn" : name;
    }

    private static Optional<LayerRole> role(LayerHint hint) {
        return switch (hint) {
            case CUTLINE -> Optional.of(LayerRole.CUTLINE);
            case TRACE -> Optional.of(LayerRole.TRACE);
            case MATT -> Optional.of(LayerRole.MATT);
            case LETTERING -> Optional.of(LayerRole.LETTERING);
            case STAIN -> Optional.of(LayerRole.STAIN);
            case ENAMEL -> Optional.of(LayerRole.ENAMEL);
            case GLASS, NONE -> Optional.empty();
        };
    }
}
