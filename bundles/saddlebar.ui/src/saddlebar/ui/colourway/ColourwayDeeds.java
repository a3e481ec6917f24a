package saddlebar.ui.colourway;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.Supplier;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.ResourceLocator;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;

import saddlebar.model.commission.Client;
import saddlebar.model.commission.Colourway;
import saddlebar.model.commission.Window;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.production.colourway.ColourwayApproval;
import saddlebar.production.colourway.Colourways;
import saddlebar.production.colourway.VidimusOrder;
import saddlebar.ui.Ids;
import saddlebar.ui.Messages;
import saddlebar.ui.StudioPreferences;
import saddlebar.ui.bench.EaselEditor;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.desk.SavingCommission;
import saddlebar.ui.make.HandedOverJob;

/** What can be done with a colourway, as items of a menu. */
final class ColourwayDeeds {
    private static final int PICTURE_PX = 2000;
    private static final int APPROVAL_UNITS = 1;

    private final IWorkbenchWindow window;
    private final Shell shell;
    private final CommissionDesk desk;
    private final WindowEdit edit;
    private final Supplier<Optional<EaselEditor>> easel;
    private final Supplier<Optional<Colourway>> chosen;
    private final List<Item> items = new ArrayList<>();

    private static final class Item extends Action {
        private final Predicate<Optional<Colourway>> when;
        private final Runnable deed;

        Item(String words, Predicate<Optional<Colourway>> when, Runnable deed) {
            super(words);
            this.when = when;
            this.deed = deed;
        }

        @Override
        public void run() {
            deed.run();
        }
    }

    ColourwayDeeds(IWorkbenchWindow window, Supplier<Optional<EaselEditor>> easel, Supplier<Optional<Colourway>> chosen) {
        this.window = window;
        this.shell = window.getShell();
        this.desk = window.getService(CommissionDesk.class);
        this.edit = new WindowEdit(desk, shell);
        this.easel = easel;
        this.chosen = chosen;
        Predicate<Optional<Colourway>> open = one -> one.isPresent() && !one.get().isApproved() && desk.canEdit();
        item(ColourWords.Deed_new, one -> modelWindow().isPresent() && desk.canEdit(), this::create);
        item(ColourWords.Deed_copy, one -> one.isPresent() && desk.canEdit(), () -> chosen().ifPresent(this::copy));
        item(ColourWords.Deed_rename, open, () -> chosen().ifPresent(this::rename));
        item(ColourWords.Deed_delete, open, () -> chosen().ifPresent(this::delete));
        item(ColourWords.Deed_make, one -> one.isPresent() && desk.canEdit() && one.get().getWindow().getChosen() != one.get(),
                () -> chosen().ifPresent(this::make));
        item(ColourWords.Deed_beside, one -> one.isPresent() && one.get().getWindow().getColourways().size() > 1, () -> chosen().ifPresent(this::beside));
        item(ColourWords.Deed_picture, Optional::isPresent, () -> chosen().ifPresent(this::picture));
        item(ColourWords.Deed_approve, one -> open.test(one) && Colourways.approved(one.get().getWindow()).isEmpty(), () -> chosen().ifPresent(this::approve));
        item(ColourWords.Deed_withdraw, one -> one.isPresent() && one.get().isApproved() && desk.canEdit(), () -> chosen().ifPresent(this::withdraw));
    }

    private void item(String words, Predicate<Optional<Colourway>> when, Runnable deed) {
        items.add(new Item(words, when, deed));
    }

    void fill(IMenuManager menu) {
        update();
        for (int i = 0; i < items.size(); i++) {
            if (i == 5 || i == 7) {
                menu.add(new Separator());
            }
            menu.add(items.get(i));
        }
    }

    /** The first and the one side by side, at hand. */
    void bar(IToolBarManager bar) {
        items.get(0).setImageDescriptor(icon("icons/new.svg"));
        items.get(5).setImageDescriptor(icon("icons/beside.svg"));
        bar.add(items.get(0));
        bar.add(items.get(5));
    }

    private static ImageDescriptor icon(String path) {
        return ResourceLocator.imageDescriptorFromBundle(Ids.PLUGIN, path).orElse(null);
    }

    void update() {
        Optional<Colourway> one = chosen.get();
        items.forEach(item -> item.setEnabled(item.when.test(one)));
    }

    private Optional<Colourway> chosen() {
        return chosen.get();
    }

    private Optional<Window> modelWindow() {
        return easel.get().flatMap(EaselEditor::modelWindow);
    }

    private void create() {
        modelWindow().ifPresent(of -> named(ColourWords.Deed_new, of, null, "", name -> {
            if (edit.perform(NLS.bind(ColourWords.Edit_new, name), of, () -> Colourways.create(of, name))) {
                showLast(of);
            }
        }));
    }

    private void copy(Colourway from) {
        Window of = from.getWindow();
        named(ColourWords.Deed_copy, of, null, NLS.bind(ColourWords.Colourway_copyOf, Colourways.name(from)), name -> {
            if (edit.perform(NLS.bind(ColourWords.Edit_copy, Colourways.name(from)), of, () -> Colourways.copy(from, name))) {
                showLast(of);
            }
        });
    }

    private void showLast(Window of) {
        easel.get().ifPresent(editor -> ShownColourway.show(editor, of.getColourways().get(of.getColourways().size() - 1)));
    }

    private void rename(Colourway one) {
        named(ColourWords.Deed_rename, one.getWindow(), one, Colourways.name(one),
                name -> edit.perform(NLS.bind(ColourWords.Edit_rename, Colourways.name(one)), one.getWindow(), () -> Colourways.rename(one, name)));
    }

    private void delete(Colourway one) {
        Window of = one.getWindow();
        if (edit.perform(NLS.bind(ColourWords.Edit_delete, Colourways.name(one)), of, () -> Colourways.delete(one)) && of.getChosen() != null) {
            easel.get().ifPresent(editor -> ShownColourway.show(editor, of.getChosen()));
        }
    }

    private void make(Colourway one) {
        edit.perform(NLS.bind(ColourWords.Edit_make, Colourways.name(one)), one.getWindow(), () -> Colourways.make(one));
    }

    private void beside(Colourway one) {
        OpenCommission open = desk.commission().orElseThrow();
        try {
            window.getActivePage().openEditor(new SideBySideInput(open.path(), one.getWindow().getName()), Ids.SIDE_BY_SIDE_EDITOR);
        } catch (PartInitException e) {
            throw new IllegalStateException("the side by side part is in plugin.xml", e);
        }
    }

    private void picture(Colourway one) {
        OpenCommission open = desk.commission().orElseThrow();
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText(ColourWords.Picture_title);
        dialog.setFilterExtensions(new String[] {"*.png"});
        dialog.setFileName(one.getWindow().getName() + " " + Colourways.name(one) + ".png");
        dialog.setOverwrite(true);
        String file = dialog.open();
        if (file != null) {
            VidimusOrder order = VidimusOrder.of(open.path(), open.commission(), one.getWindow(), Optional.of(one), StudioPreferences.light(), PICTURE_PX);
            new VidimusJob(order, Path.of(file.endsWith(".png") ? file : file + ".png"), shell).schedule();
        }
    }

    private void approve(Colourway one) {
        Client client = desk.commission().map(open -> open.commission().getClient()).orElse(null);
        String usual = client == null || client.getName() == null ? "" : client.getName();
        person(ColourWords.Deed_approve, NLS.bind(ColourWords.Approve_who, Colourways.name(one)), usual, who -> decide(one, (folder, same) -> {
            ColourwayApproval.approve(folder, same, who, LocalDate.now());
        }));
    }

    private void withdraw(Colourway one) {
        person(ColourWords.Deed_withdraw, NLS.bind(ColourWords.Withdraw_who, Colourways.name(one)), "", who -> decide(one, (folder, same) -> {
            ColourwayApproval.withdraw(folder, same, who, LocalDate.now(), "");
        }));
    }

    /** What goes into the records as well. */
    @FunctionalInterface
    private interface Decision {
        void take(CommissionFolder folder, Colourway colourway) throws IOException;
    }

    private void decide(Colourway one, Decision decision) {
        OpenCommission open = desk.commission().orElseThrow();
        boolean saved = !open.isDirty() || MessageDialog.openConfirm(shell, ColourWords.Approve_saveTitle, ColourWords.Approve_save)
                && new SavingCommission(shell).save(open);
        if (!saved) {
            return;
        }
        String windowName = one.getWindow().getName();
        String id = one.getId();
        HandedOverJob<String> job = new HandedOverJob<>(ColourWords.Approve_job, desk, shell.getDisplay(), APPROVAL_UNITS, (path, work) -> {
            try (CommissionFolder folder = CommissionFolder.open(path, Access.WRITE)) {
                Window same = folder.window(windowName).orElseThrow(() -> new IOException(windowName + " is gone"));
                decision.take(folder, same.getColourways().stream().filter(colourway -> id.equals(colourway.getId())).findFirst().orElseThrow());
                work.advance(APPROVAL_UNITS);
                return windowName;
            }
        }, name -> easel.get().ifPresent(editor -> editor.setFocus()));
        try {
            job.begin();
        } catch (IOException e) {
            MessageDialog.openError(shell, Messages.Make_failedTitle, e.getMessage());
        }
    }

    private void named(String title, Window of, Colourway own, String usual, Consumer<String> then) {
        InputDialog dialog = new InputDialog(shell, plain(title), ColourWords.Colourway_askName, usual, name -> {
            boolean taken = of.getColourways().stream().anyMatch(other -> other != own && Colourways.name(other).equalsIgnoreCase(name.strip()));
            return name.isBlank() ? "" : taken ? NLS.bind(ColourWords.Colourway_taken, name.strip()) : null;
        });
        if (dialog.open() == org.eclipse.jface.window.Window.OK) {
            then.accept(dialog.getValue());
        }
    }

    private void person(String title, String question, String usual, Consumer<String> then) {
        InputDialog dialog = new InputDialog(shell, plain(title), question, usual, name -> name.isBlank() ? "" : null);
        if (dialog.open() == org.eclipse.jface.window.Window.OK) {
            then.accept(dialog.getValue());
        }
    }

    private static String plain(String menuWords) {
        return menuWords.replace("&", "").replace(" …", "");
    }
}
