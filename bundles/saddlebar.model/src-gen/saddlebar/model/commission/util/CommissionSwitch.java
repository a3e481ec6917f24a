/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.util;

import java.util.Map;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.util.Switch;

import saddlebar.model.commission.*;

/**
 * <!-- begin-user-doc -->
 * The <b>Switch</b> for the model's inheritance hierarchy.
 * It supports the call {@link #doSwitch(EObject) doSwitch(object)}
 * to invoke the <code>caseXXX</code> method for each class of the model,
 * starting with the actual class of the object
 * and proceeding up the inheritance hierarchy
 * until a non-null result is returned,
 * which is the result of the switch.
 * <!-- end-user-doc -->
 * @see saddlebar.model.commission.CommissionPackage
 * @generated
 */
public class CommissionSwitch<T> extends Switch<T> {
	/**
	 * The cached model package
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected static CommissionPackage modelPackage;

	/**
	 * Creates an instance of the switch.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public CommissionSwitch() {
		if (modelPackage == null) {
			modelPackage = CommissionPackage.eINSTANCE;
		}
	}

	/**
	 * Checks whether this is a switch for the given package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param ePackage the package in question.
	 * @return whether this is a switch for the given package.
	 * @generated
	 */
	@Override
	protected boolean isSwitchFor(EPackage ePackage) {
		return ePackage == modelPackage;
	}

	/**
	 * Calls <code>caseXXX</code> for each class of the model until one returns a non null result; it yields that result.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the first non-null result returned by a <code>caseXXX</code> call.
	 * @generated
	 */
	@Override
	protected T doSwitch(int classifierID, EObject theEObject) {
		switch (classifierID) {
			case CommissionPackage.IDENTIFIED: {
				Identified identified = (Identified)theEObject;
				T result = caseIdentified(identified);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.NAMED: {
				Named named = (Named)theEObject;
				T result = caseNamed(named);
				if (result == null) result = caseIdentified(named);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.MADE_FILE: {
				MadeFile madeFile = (MadeFile)theEObject;
				T result = caseMadeFile(madeFile);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.STUDIO: {
				Studio studio = (Studio)theEObject;
				T result = caseStudio(studio);
				if (result == null) result = caseNamed(studio);
				if (result == null) result = caseIdentified(studio);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.JOINED_COMMISSION: {
				JoinedCommission joinedCommission = (JoinedCommission)theEObject;
				T result = caseJoinedCommission(joinedCommission);
				if (result == null) result = caseNamed(joinedCommission);
				if (result == null) result = caseIdentified(joinedCommission);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.PAPER_SIZE: {
				PaperSize paperSize = (PaperSize)theEObject;
				T result = casePaperSize(paperSize);
				if (result == null) result = caseNamed(paperSize);
				if (result == null) result = caseIdentified(paperSize);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.MESH: {
				Mesh mesh = (Mesh)theEObject;
				T result = caseMesh(mesh);
				if (result == null) result = caseNamed(mesh);
				if (result == null) result = caseIdentified(mesh);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.SCREEN_FRAME: {
				ScreenFrame screenFrame = (ScreenFrame)theEObject;
				T result = caseScreenFrame(screenFrame);
				if (result == null) result = caseNamed(screenFrame);
				if (result == null) result = caseIdentified(screenFrame);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.PAINT: {
				Paint paint = (Paint)theEObject;
				T result = casePaint(paint);
				if (result == null) result = caseNamed(paint);
				if (result == null) result = caseIdentified(paint);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.PAINT_LOT: {
				PaintLot paintLot = (PaintLot)theEObject;
				T result = casePaintLot(paintLot);
				if (result == null) result = caseNamed(paintLot);
				if (result == null) result = caseIdentified(paintLot);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.MEDIUM: {
				Medium medium = (Medium)theEObject;
				T result = caseMedium(medium);
				if (result == null) result = caseNamed(medium);
				if (result == null) result = caseIdentified(medium);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.GLASS_STOCK: {
				GlassStock glassStock = (GlassStock)theEObject;
				T result = caseGlassStock(glassStock);
				if (result == null) result = caseNamed(glassStock);
				if (result == null) result = caseIdentified(glassStock);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.JOIN_STOCK: {
				JoinStock joinStock = (JoinStock)theEObject;
				T result = caseJoinStock(joinStock);
				if (result == null) result = caseNamed(joinStock);
				if (result == null) result = caseIdentified(joinStock);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.SOLDER_STOCK: {
				SolderStock solderStock = (SolderStock)theEObject;
				T result = caseSolderStock(solderStock);
				if (result == null) result = caseNamed(solderStock);
				if (result == null) result = caseIdentified(solderStock);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.BAR_STOCK: {
				BarStock barStock = (BarStock)theEObject;
				T result = caseBarStock(barStock);
				if (result == null) result = caseNamed(barStock);
				if (result == null) result = caseIdentified(barStock);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.KILN: {
				Kiln kiln = (Kiln)theEObject;
				T result = caseKiln(kiln);
				if (result == null) result = caseNamed(kiln);
				if (result == null) result = caseIdentified(kiln);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.FIRING_SCHEDULE: {
				FiringSchedule firingSchedule = (FiringSchedule)theEObject;
				T result = caseFiringSchedule(firingSchedule);
				if (result == null) result = caseNamed(firingSchedule);
				if (result == null) result = caseIdentified(firingSchedule);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.FIRING_SEGMENT: {
				FiringSegment firingSegment = (FiringSegment)theEObject;
				T result = caseFiringSegment(firingSegment);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.PRICE_BOOK: {
				PriceBook priceBook = (PriceBook)theEObject;
				T result = casePriceBook(priceBook);
				if (result == null) result = caseIdentified(priceBook);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.PRICE_ITEM: {
				PriceItem priceItem = (PriceItem)theEObject;
				T result = casePriceItem(priceItem);
				if (result == null) result = caseNamed(priceItem);
				if (result == null) result = caseIdentified(priceItem);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.PRINTER: {
				Printer printer = (Printer)theEObject;
				T result = casePrinter(printer);
				if (result == null) result = caseNamed(printer);
				if (result == null) result = caseIdentified(printer);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.SHEET_STOCK: {
				SheetStock sheetStock = (SheetStock)theEObject;
				T result = caseSheetStock(sheetStock);
				if (result == null) result = caseNamed(sheetStock);
				if (result == null) result = caseIdentified(sheetStock);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.TONE_CALIBRATION: {
				ToneCalibration toneCalibration = (ToneCalibration)theEObject;
				T result = caseToneCalibration(toneCalibration);
				if (result == null) result = caseNamed(toneCalibration);
				if (result == null) result = caseIdentified(toneCalibration);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.TONE_POINT: {
				TonePoint tonePoint = (TonePoint)theEObject;
				T result = caseTonePoint(tonePoint);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.PROCESS_SETTING: {
				ProcessSetting processSetting = (ProcessSetting)theEObject;
				T result = caseProcessSetting(processSetting);
				if (result == null) result = caseNamed(processSetting);
				if (result == null) result = caseIdentified(processSetting);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.PERSON: {
				Person person = (Person)theEObject;
				T result = casePerson(person);
				if (result == null) result = caseNamed(person);
				if (result == null) result = caseIdentified(person);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.SUPPLIER: {
				Supplier supplier = (Supplier)theEObject;
				T result = caseSupplier(supplier);
				if (result == null) result = caseNamed(supplier);
				if (result == null) result = caseIdentified(supplier);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.COMMISSION: {
				Commission commission = (Commission)theEObject;
				T result = caseCommission(commission);
				if (result == null) result = caseIdentified(commission);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.CLIENT: {
				Client client = (Client)theEObject;
				T result = caseClient(client);
				if (result == null) result = caseNamed(client);
				if (result == null) result = caseIdentified(client);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.SITE: {
				Site site = (Site)theEObject;
				T result = caseSite(site);
				if (result == null) result = caseNamed(site);
				if (result == null) result = caseIdentified(site);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.MILESTONE: {
				Milestone milestone = (Milestone)theEObject;
				T result = caseMilestone(milestone);
				if (result == null) result = caseNamed(milestone);
				if (result == null) result = caseIdentified(milestone);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.QUOTE: {
				Quote quote = (Quote)theEObject;
				T result = caseQuote(quote);
				if (result == null) result = caseNamed(quote);
				if (result == null) result = caseIdentified(quote);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.QUOTE_LINE: {
				QuoteLine quoteLine = (QuoteLine)theEObject;
				T result = caseQuoteLine(quoteLine);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.APPROVAL: {
				Approval approval = (Approval)theEObject;
				T result = caseApproval(approval);
				if (result == null) result = caseNamed(approval);
				if (result == null) result = caseIdentified(approval);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.SHEET: {
				Sheet sheet = (Sheet)theEObject;
				T result = caseSheet(sheet);
				if (result == null) result = caseIdentified(sheet);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.PLACEMENT: {
				Placement placement = (Placement)theEObject;
				T result = casePlacement(placement);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.WINDOW: {
				Window window = (Window)theEObject;
				T result = caseWindow(window);
				if (result == null) result = caseIdentified(window);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.OPENING: {
				Opening opening = (Opening)theEObject;
				T result = caseOpening(opening);
				if (result == null) result = caseIdentified(opening);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.COLOURWAY: {
				Colourway colourway = (Colourway)theEObject;
				T result = caseColourway(colourway);
				if (result == null) result = caseNamed(colourway);
				if (result == null) result = caseIdentified(colourway);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.GLASS_CHOICE: {
				GlassChoice glassChoice = (GlassChoice)theEObject;
				T result = caseGlassChoice(glassChoice);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.PANEL: {
				Panel panel = (Panel)theEObject;
				T result = casePanel(panel);
				if (result == null) result = caseNamed(panel);
				if (result == null) result = caseIdentified(panel);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.ARTWORK_REFERENCE: {
				ArtworkReference artworkReference = (ArtworkReference)theEObject;
				T result = caseArtworkReference(artworkReference);
				if (result == null) result = caseIdentified(artworkReference);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.ROLE_ASSIGNMENT: {
				RoleAssignment roleAssignment = (RoleAssignment)theEObject;
				T result = caseRoleAssignment(roleAssignment);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.PIECE: {
				Piece piece = (Piece)theEObject;
				T result = casePiece(piece);
				if (result == null) result = caseIdentified(piece);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.DESIGN_LAYER: {
				DesignLayer designLayer = (DesignLayer)theEObject;
				T result = caseDesignLayer(designLayer);
				if (result == null) result = caseNamed(designLayer);
				if (result == null) result = caseIdentified(designLayer);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.STENCIL_RECIPE: {
				StencilRecipe stencilRecipe = (StencilRecipe)theEObject;
				T result = caseStencilRecipe(stencilRecipe);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.STENCIL: {
				Stencil stencil = (Stencil)theEObject;
				T result = caseStencil(stencil);
				if (result == null) result = caseIdentified(stencil);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.STENCIL_PIECE: {
				StencilPiece stencilPiece = (StencilPiece)theEObject;
				T result = caseStencilPiece(stencilPiece);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.SETTING: {
				@SuppressWarnings("unchecked") Map.Entry<String, String> setting = (Map.Entry<String, String>)theEObject;
				T result = caseSetting(setting);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.MAKING_RECORD: {
				MakingRecord makingRecord = (MakingRecord)theEObject;
				T result = caseMakingRecord(makingRecord);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.ARTWORK_BROUGHT: {
				ArtworkBrought artworkBrought = (ArtworkBrought)theEObject;
				T result = caseArtworkBrought(artworkBrought);
				if (result == null) result = caseMakingRecord(artworkBrought);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.PIECES_MADE: {
				PiecesMade piecesMade = (PiecesMade)theEObject;
				T result = casePiecesMade(piecesMade);
				if (result == null) result = caseMakingRecord(piecesMade);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.STENCIL_MADE: {
				StencilMade stencilMade = (StencilMade)theEObject;
				T result = caseStencilMade(stencilMade);
				if (result == null) result = caseMakingRecord(stencilMade);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.SHEET_MADE: {
				SheetMade sheetMade = (SheetMade)theEObject;
				T result = caseSheetMade(sheetMade);
				if (result == null) result = caseMakingRecord(sheetMade);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.DOCUMENT_MADE: {
				DocumentMade documentMade = (DocumentMade)theEObject;
				T result = caseDocumentMade(documentMade);
				if (result == null) result = caseMakingRecord(documentMade);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.SCREEN_LOAD: {
				ScreenLoad screenLoad = (ScreenLoad)theEObject;
				T result = caseScreenLoad(screenLoad);
				if (result == null) result = caseMakingRecord(screenLoad);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.RECLAIM: {
				Reclaim reclaim = (Reclaim)theEObject;
				T result = caseReclaim(reclaim);
				if (result == null) result = caseMakingRecord(reclaim);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.PAINT_MIX: {
				PaintMix paintMix = (PaintMix)theEObject;
				T result = casePaintMix(paintMix);
				if (result == null) result = caseMakingRecord(paintMix);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.PRINT_RUN: {
				PrintRun printRun = (PrintRun)theEObject;
				T result = casePrintRun(printRun);
				if (result == null) result = caseMakingRecord(printRun);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.FIRING: {
				Firing firing = (Firing)theEObject;
				T result = caseFiring(firing);
				if (result == null) result = caseMakingRecord(firing);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.RUN_SEGMENT: {
				RunSegment runSegment = (RunSegment)theEObject;
				T result = caseRunSegment(runSegment);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.SHELF_PLACE: {
				ShelfPlace shelfPlace = (ShelfPlace)theEObject;
				T result = caseShelfPlace(shelfPlace);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.GLAZING: {
				Glazing glazing = (Glazing)theEObject;
				T result = caseGlazing(glazing);
				if (result == null) result = caseMakingRecord(glazing);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.FIXING: {
				Fixing fixing = (Fixing)theEObject;
				T result = caseFixing(fixing);
				if (result == null) result = caseMakingRecord(fixing);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.DEFECT: {
				Defect defect = (Defect)theEObject;
				T result = caseDefect(defect);
				if (result == null) result = caseMakingRecord(defect);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.REMAKE: {
				Remake remake = (Remake)theEObject;
				T result = caseRemake(remake);
				if (result == null) result = caseMakingRecord(remake);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.NOTE: {
				Note note = (Note)theEObject;
				T result = caseNote(note);
				if (result == null) result = caseMakingRecord(note);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.COST_LINE: {
				CostLine costLine = (CostLine)theEObject;
				T result = caseCostLine(costLine);
				if (result == null) result = caseMakingRecord(costLine);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.STOCK_MOVE: {
				StockMove stockMove = (StockMove)theEObject;
				T result = caseStockMove(stockMove);
				if (result == null) result = caseMakingRecord(stockMove);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.APPROVED: {
				Approved approved = (Approved)theEObject;
				T result = caseApproved(approved);
				if (result == null) result = caseMakingRecord(approved);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.OTHER_RECORD: {
				OtherRecord otherRecord = (OtherRecord)theEObject;
				T result = caseOtherRecord(otherRecord);
				if (result == null) result = caseMakingRecord(otherRecord);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.STOCK_SHEET: {
				StockSheet stockSheet = (StockSheet)theEObject;
				T result = caseStockSheet(stockSheet);
				if (result == null) result = caseNamed(stockSheet);
				if (result == null) result = caseIdentified(stockSheet);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.GLASS_FLAW: {
				GlassFlaw glassFlaw = (GlassFlaw)theEObject;
				T result = caseGlassFlaw(glassFlaw);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.MENDED_PLACE: {
				MendedPlace mendedPlace = (MendedPlace)theEObject;
				T result = caseMendedPlace(mendedPlace);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.ACCEPTED_MEND: {
				AcceptedMend acceptedMend = (AcceptedMend)theEObject;
				T result = caseAcceptedMend(acceptedMend);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case CommissionPackage.JOIN_RULE: {
				JoinRule joinRule = (JoinRule)theEObject;
				T result = caseJoinRule(joinRule);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			default: return defaultCase(theEObject);
		}
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Identified</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Identified</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseIdentified(Identified object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Named</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Named</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseNamed(Named object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Made File</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Made File</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseMadeFile(MadeFile object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Studio</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Studio</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseStudio(Studio object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Joined Commission</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Joined Commission</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseJoinedCommission(JoinedCommission object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Paper Size</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Paper Size</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePaperSize(PaperSize object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Mesh</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Mesh</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseMesh(Mesh object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Screen Frame</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Screen Frame</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseScreenFrame(ScreenFrame object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Paint</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Paint</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePaint(Paint object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Paint Lot</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Paint Lot</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePaintLot(PaintLot object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Medium</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Medium</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseMedium(Medium object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Glass Stock</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Glass Stock</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseGlassStock(GlassStock object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Stock Sheet</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Stock Sheet</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseStockSheet(StockSheet object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Glass Flaw</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Glass Flaw</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseGlassFlaw(GlassFlaw object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Join Stock</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Join Stock</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseJoinStock(JoinStock object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Solder Stock</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Solder Stock</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSolderStock(SolderStock object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Bar Stock</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Bar Stock</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseBarStock(BarStock object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Kiln</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Kiln</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseKiln(Kiln object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Firing Schedule</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Firing Schedule</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseFiringSchedule(FiringSchedule object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Firing Segment</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Firing Segment</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseFiringSegment(FiringSegment object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Price Book</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Price Book</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePriceBook(PriceBook object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Price Item</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Price Item</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePriceItem(PriceItem object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Printer</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Printer</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePrinter(Printer object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Sheet Stock</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Sheet Stock</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSheetStock(SheetStock object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Tone Calibration</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Tone Calibration</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseToneCalibration(ToneCalibration object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Tone Point</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Tone Point</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseTonePoint(TonePoint object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Process Setting</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Process Setting</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseProcessSetting(ProcessSetting object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Person</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Person</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePerson(Person object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Supplier</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Supplier</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSupplier(Supplier object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Commission</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Commission</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseCommission(Commission object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Client</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Client</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseClient(Client object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Site</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Site</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSite(Site object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Milestone</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Milestone</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseMilestone(Milestone object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Quote</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Quote</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseQuote(Quote object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Quote Line</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Quote Line</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseQuoteLine(QuoteLine object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Approval</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Approval</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseApproval(Approval object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Sheet</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Sheet</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSheet(Sheet object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Placement</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Placement</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePlacement(Placement object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Window</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Window</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseWindow(Window object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Opening</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Opening</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseOpening(Opening object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Colourway</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Colourway</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseColourway(Colourway object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Glass Choice</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Glass Choice</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseGlassChoice(GlassChoice object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Panel</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Panel</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePanel(Panel object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Artwork Reference</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Artwork Reference</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseArtworkReference(ArtworkReference object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Role Assignment</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Role Assignment</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseRoleAssignment(RoleAssignment object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Piece</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Piece</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePiece(Piece object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Accepted Mend</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Accepted Mend</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseAcceptedMend(AcceptedMend object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Join Rule</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Join Rule</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseJoinRule(JoinRule object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Design Layer</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Design Layer</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseDesignLayer(DesignLayer object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Stencil Recipe</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Stencil Recipe</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseStencilRecipe(StencilRecipe object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Mended Place</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Mended Place</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseMendedPlace(MendedPlace object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Stencil</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Stencil</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseStencil(Stencil object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Stencil Piece</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Stencil Piece</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseStencilPiece(StencilPiece object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Setting</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Setting</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSetting(Map.Entry<String, String> object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Making Record</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Making Record</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseMakingRecord(MakingRecord object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Artwork Brought</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Artwork Brought</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseArtworkBrought(ArtworkBrought object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Pieces Made</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Pieces Made</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePiecesMade(PiecesMade object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Stencil Made</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Stencil Made</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseStencilMade(StencilMade object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Sheet Made</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Sheet Made</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSheetMade(SheetMade object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Document Made</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Document Made</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseDocumentMade(DocumentMade object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Screen Load</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Screen Load</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseScreenLoad(ScreenLoad object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Reclaim</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Reclaim</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseReclaim(Reclaim object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Paint Mix</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Paint Mix</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePaintMix(PaintMix object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Print Run</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Print Run</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePrintRun(PrintRun object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Firing</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Firing</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseFiring(Firing object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Run Segment</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Run Segment</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseRunSegment(RunSegment object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Shelf Place</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Shelf Place</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseShelfPlace(ShelfPlace object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Glazing</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Glazing</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseGlazing(Glazing object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Fixing</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Fixing</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseFixing(Fixing object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Defect</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Defect</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseDefect(Defect object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Remake</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Remake</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseRemake(Remake object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Note</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Note</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseNote(Note object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Cost Line</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Cost Line</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseCostLine(CostLine object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Stock Move</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Stock Move</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseStockMove(StockMove object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Approved</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Approved</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseApproved(Approved object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Other Record</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Other Record</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseOtherRecord(OtherRecord object) {
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>EObject</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch, but this is the last case anyway.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>EObject</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject)
	 * @generated
	 */
	@Override
	public T defaultCase(EObject object) {
		return null;
	}

} //CommissionSwitch
