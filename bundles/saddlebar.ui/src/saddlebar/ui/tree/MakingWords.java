package saddlebar.ui.tree;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.eclipse.osgi.util.NLS;

import saddlebar.model.commission.MakingState;
import saddlebar.ui.Messages;

/** Where things stand in the making, in words. */
public final class MakingWords {
    private MakingWords() {
    }

    public static String of(MakingState state) {
        return switch (state) {
            case DRAWN -> Messages.State_drawn;
            case ON_SHEET -> Messages.State_onSheet;
            case ON_SCREEN -> Messages.State_onScreen;
            case PRINTED -> Messages.State_printed;
            case FIRED -> Messages.State_fired;
            case GLAZED -> Messages.State_glazed;
            case IN_DOUBT -> Messages.State_inDoubt;
            case TO_REMAKE -> Messages.State_toRemake;
        };
    }

    /** Of many things at once: {@code all fired}, or {@code 12 printed, 3 drawn}, the farthest first. */
    public static String of(List<MakingState> states) {
        if (states.isEmpty()) {
            return "";
        }
        Map<MakingState, Long> counts = states.stream().collect(Collectors.groupingBy(state -> state, () -> new EnumMap<>(MakingState.class),
                Collectors.counting()));
        if (counts.size() == 1) {
            return states.size() == 1 ? of(states.get(0)) : NLS.bind(Messages.State_all, of(states.get(0)));
        }
        return counts.entrySet().stream().sorted(Map.Entry.<MakingState, Long>comparingByKey().reversed())
                .map(entry -> NLS.bind(Messages.State_some, entry.getValue(), of(entry.getKey()))).collect(Collectors.joining(Messages.List_comma));
    }
}
