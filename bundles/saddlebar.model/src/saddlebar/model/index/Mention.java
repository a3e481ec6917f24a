package saddlebar.model.index;

import saddlebar.model.units.Require;

/**
 * One thing that a record speaks of.
 *
 * @param role  how
 * @param thing name of the thing, the same in every record that means it: {@code mix=M07}, {@code id=} and a UUID
 */
public record Mention(Role role, String thing) {
    public Mention {
        Require.text("thing", thing);
    }
}
