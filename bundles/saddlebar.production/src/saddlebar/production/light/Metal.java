package saddlebar.production.light;

import saddlebar.model.units.Require;

/**
 * Foil and solder, or came: dark against the light.
 *
 * @param coverMm how far it lies over the rim of each piece, in mm, 0 to 20
 */
public record Metal(double coverMm) {
    public Metal {
        Require.within("coverMm", coverMm, 0, 20);
    }
}
