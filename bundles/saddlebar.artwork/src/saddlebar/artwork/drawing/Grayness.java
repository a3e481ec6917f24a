package saddlebar.artwork.drawing;

/** Whether a drawing has no colour at all, so that gray of its code values and its luminance are the same. */
final class Grayness {
    private Grayness() {
    }

    static boolean of(Item item) {
        if (item instanceof Group group) {
            return group.effect().isEmpty() && group.children().stream().allMatch(Grayness::of); // a mask gives shares, not colours
        } else if (item instanceof Figure figure) {
            return figure.fill().map(Grayness::of).orElse(true) && figure.line().map(line -> of(line.tint())).orElse(true);
        } else if (item instanceof Photo photo) {
            return photo.picture().channels() < 3;
        }
        throw new IllegalArgumentException("unknown item " + item);
    }

    private static boolean of(Tint tint) {
        if (tint instanceof Tint.Flat flat) {
            return GrayCode.grayed(flat.argb()) == flat.argb();
        } else if (tint instanceof Ramp.Linear linear) {
            return linear.ramp().isGray();
        } else if (tint instanceof Ramp.Radial radial) {
            return radial.ramp().isGray();
        } else if (tint instanceof Tiles tiles) {
            return of(tiles.content());
        }
        throw new IllegalArgumentException("unknown tint " + tint);
    }
}
