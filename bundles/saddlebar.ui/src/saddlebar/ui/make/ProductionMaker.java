package saddlebar.ui.make;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.work.Work;
import saddlebar.production.facts.CommissionFacts;
import saddlebar.production.facts.FactsReader;
import saddlebar.production.make.MakeBook;
import saddlebar.production.make.MakeRequest;
import saddlebar.production.make.MakeResult;
import saddlebar.production.make.Making;

/** The making pipeline, as the desktop asks for it: on the commission's folder, opened for this alone. */
@Component(service = Maker.class)
public final class ProductionMaker implements Maker {
    private final Making making;

    @Activate
    public ProductionMaker(@Reference Making making) {
        this.making = making;
    }

    @Override
    public MakeSummary make(Path commission, Work work) throws IOException {
        try (CommissionFolder folder = CommissionFolder.open(commission, Access.WRITE)) {
            CommissionFacts facts = FactsReader.read(folder.commission(), folder.path(), List.of());
            MakeResult result = making.make(facts, MakeRequest.all(), work.part(WORK_UNITS, Making.WORK_UNITS));
            MakeBook.enter(folder, result);
            folder.save();
            return new MakeSummary(result.made().size(), result.kept(), folder.path().resolve(Making.FOLDER), result.problems());
        }
    }
}
