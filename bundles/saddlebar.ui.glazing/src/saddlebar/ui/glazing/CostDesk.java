package saddlebar.ui.glazing;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executor;
import java.util.function.Supplier;

import saddlebar.materials.cost.CostSources;
import saddlebar.materials.cost.QuoteBook;
import saddlebar.model.commission.Quote;
import saddlebar.model.problem.Refusal;
import saddlebar.model.work.Work;
import saddlebar.production.cost.CommissionCosts;
import saddlebar.production.cost.CostAsk;
import saddlebar.production.kiln.StudioHeat;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.screening.NewestWins;

/** What the open commission costs, reckoned anew whenever something in it changes. On the screen's thread. */
public final class CostDesk {
    private final CommissionDesk desk;
    private final StudioHeat heat;
    private final CostSources sources;
    private final Supplier<LocalDate> today;
    private final Executor screen;
    private final NewestWins<CostAsk> asks;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private Optional<CommissionCosts> costs = Optional.empty();
    private String trouble = "";

    /**
     * @param beside runs one thing after the other away from the screen
     * @param screen runs on the screen's thread
     */
    public CostDesk(CommissionDesk desk, StudioHeat heat, CostSources sources, Supplier<LocalDate> today, Executor beside, Executor screen) {
        this.desk = desk;
        this.heat = heat;
        this.sources = sources;
        this.today = today;
        this.screen = screen;
        this.asks = new NewestWins<>(beside, this::reckon);
        desk.addListener(new CommissionDesk.Listener() {
            @Override
            public void opened(OpenCommission commission) {
                costs = Optional.empty();
                refresh();
            }

            @Override
            public void closing(OpenCommission commission) {
                asks.forget();
                costs = Optional.empty();
                trouble = "";
                tell();
            }

            @Override
            public void changed(OpenCommission commission) {
                refresh();
            }
        });
        refresh();
    }

    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    public void removeListener(Runnable listener) {
        listeners.remove(listener);
    }

    private void tell() {
        listeners.forEach(Runnable::run);
    }

    public Optional<OpenCommission> commission() {
        return desk.commission();
    }

    public boolean canEdit() {
        return desk.canEdit();
    }

    /** Empty while they are not ready, or cannot be. */
    public Optional<CommissionCosts> costs() {
        return costs;
    }

    /** Why nothing could be reckoned, in words; empty if there is no reason. */
    public String trouble() {
        return trouble;
    }

    public List<Quote> quotes() {
        return desk.commission().map(open -> List.copyOf(open.commission().getQuotes())).orElse(List.of());
    }

    /** Reads and reckons anew. While production has the commission, what was reckoned before stays. */
    public void refresh() {
        if (desk.commission().isEmpty() || desk.isMaking()) {
            tell();
            return;
        }
        try {
            trouble = "";
            asks.ask(CostAsk.read(desk.commission().get().folder(), heat, today.get(), Optional.empty()));
        } catch (IOException | Refusal cannot) {
            asks.forget();
            costs = Optional.empty();
            trouble = cannot.getMessage();
        }
        tell();
    }

    private void reckon(CostAsk ask, Work work) {
        try {
            CommissionCosts made = CommissionCosts.of(ask, sources.all(), work);
            work.checkpoint();
            screen.execute(() -> {
                costs = Optional.of(made);
                trouble = "";
                tell();
            });
        } catch (Refusal | IllegalArgumentException cannot) {
            screen.execute(() -> {
                costs = Optional.empty();
                trouble = cannot.getMessage();
                tell();
            });
        }
    }

    /**
     * Freezes the estimate as a quote, or as a change order to the last one. It is saved at once, with what else was not saved: a number that was given away
     * must not be lost.
     *
     * @param reason of a change order; empty for a quote
     * @throws Refusal if there is nothing to quote
     */
    public Quote freeze(Optional<String> reason) throws IOException {
        CommissionCosts now = costs.orElseThrow(() -> new IllegalStateException("nothing is reckoned yet"));
        OpenCommission open = desk.commission().orElseThrow();
        Quote quote = reason.isPresent()
                ? QuoteBook.change(open.folder(), now.estimate(), today.get(), reason.get())
                : QuoteBook.freeze(open.folder(), now.estimate(), today.get());
        open.edits().saved();
        return quote;
    }
}
