/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import java.time.Instant;
import java.time.LocalDate;

import java.util.Map;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.impl.EFactoryImpl;

import org.eclipse.emf.ecore.plugin.EcorePlugin;

import saddlebar.model.art.OutlineMm;

import saddlebar.model.commission.*;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Factory</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class CommissionFactoryImpl extends EFactoryImpl implements CommissionFactory {
	/**
	 * Creates the default factory implementation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static CommissionFactory init() {
		try {
			CommissionFactory theCommissionFactory = (CommissionFactory)EPackage.Registry.INSTANCE.getEFactory(CommissionPackage.eNS_URI);
			if (theCommissionFactory != null) {
				return theCommissionFactory;
			}
		}
		catch (Exception exception) {
			EcorePlugin.INSTANCE.log(exception);
		}
		return new CommissionFactoryImpl();
	}

	/**
	 * Creates an instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public CommissionFactoryImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EObject create(EClass eClass) {
		switch (eClass.getClassifierID()) {
			case CommissionPackage.MADE_FILE: return createMadeFile();
			case CommissionPackage.STUDIO: return createStudio();
			case CommissionPackage.JOINED_COMMISSION: return createJoinedCommission();
			case CommissionPackage.PAPER_SIZE: return createPaperSize();
			case CommissionPackage.MESH: return createMesh();
			case CommissionPackage.SCREEN_FRAME: return createScreenFrame();
			case CommissionPackage.PAINT: return createPaint();
			case CommissionPackage.PAINT_LOT: return createPaintLot();
			case CommissionPackage.MEDIUM: return createMedium();
			case CommissionPackage.GLASS_STOCK: return createGlassStock();
			case CommissionPackage.JOIN_STOCK: return createJoinStock();
			case CommissionPackage.SOLDER_STOCK: return createSolderStock();
			case CommissionPackage.BAR_STOCK: return createBarStock();
			case CommissionPackage.KILN: return createKiln();
			case CommissionPackage.FIRING_SCHEDULE: return createFiringSchedule();
			case CommissionPackage.FIRING_SEGMENT: return createFiringSegment();
			case CommissionPackage.PRICE_BOOK: return createPriceBook();
			case CommissionPackage.PRICE_ITEM: return createPriceItem();
			case CommissionPackage.PRINTER: return createPrinter();
			case CommissionPackage.SHEET_STOCK: return createSheetStock();
			case CommissionPackage.TONE_CALIBRATION: return createToneCalibration();
			case CommissionPackage.TONE_POINT: return createTonePoint();
			case CommissionPackage.PROCESS_SETTING: return createProcessSetting();
			case CommissionPackage.PERSON: return createPerson();
			case CommissionPackage.SUPPLIER: return createSupplier();
			case CommissionPackage.COMMISSION: return createCommission();
			case CommissionPackage.CLIENT: return createClient();
			case CommissionPackage.SITE: return createSite();
			case CommissionPackage.MILESTONE: return createMilestone();
			case CommissionPackage.QUOTE: return createQuote();
			case CommissionPackage.QUOTE_LINE: return createQuoteLine();
			case CommissionPackage.APPROVAL: return createApproval();
			case CommissionPackage.SHEET: return createSheet();
			case CommissionPackage.PLACEMENT: return createPlacement();
			case CommissionPackage.WINDOW: return createWindow();
			case CommissionPackage.OPENING: return createOpening();
			case CommissionPackage.COLOURWAY: return createColourway();
			case CommissionPackage.GLASS_CHOICE: return createGlassChoice();
			case CommissionPackage.PANEL: return createPanel();
			case CommissionPackage.ARTWORK_REFERENCE: return createArtworkReference();
			case CommissionPackage.ROLE_ASSIGNMENT: return createRoleAssignment();
			case CommissionPackage.PIECE: return createPiece();
			case CommissionPackage.DESIGN_LAYER: return createDesignLayer();
			case CommissionPackage.STENCIL_RECIPE: return createStencilRecipe();
			case CommissionPackage.STENCIL: return createStencil();
			case CommissionPackage.STENCIL_PIECE: return createStencilPiece();
			case CommissionPackage.SETTING: return (EObject)createSetting();
			case CommissionPackage.ARTWORK_BROUGHT: return createArtworkBrought();
			case CommissionPackage.PIECES_MADE: return createPiecesMade();
			case CommissionPackage.STENCIL_MADE: return createStencilMade();
			case CommissionPackage.SHEET_MADE: return createSheetMade();
			case CommissionPackage.DOCUMENT_MADE: return createDocumentMade();
			case CommissionPackage.SCREEN_LOAD: return createScreenLoad();
			case CommissionPackage.RECLAIM: return createReclaim();
			case CommissionPackage.PAINT_MIX: return createPaintMix();
			case CommissionPackage.PRINT_RUN: return createPrintRun();
			case CommissionPackage.FIRING: return createFiring();
			case CommissionPackage.RUN_SEGMENT: return createRunSegment();
			case CommissionPackage.SHELF_PLACE: return createShelfPlace();
			case CommissionPackage.GLAZING: return createGlazing();
			case CommissionPackage.FIXING: return createFixing();
			case CommissionPackage.DEFECT: return createDefect();
			case CommissionPackage.REMAKE: return createRemake();
			case CommissionPackage.NOTE: return createNote();
			case CommissionPackage.COST_LINE: return createCostLine();
			case CommissionPackage.STOCK_MOVE: return createStockMove();
			case CommissionPackage.APPROVED: return createApproved();
			case CommissionPackage.OTHER_RECORD: return createOtherRecord();
			case CommissionPackage.STOCK_SHEET: return createStockSheet();
			case CommissionPackage.GLASS_FLAW: return createGlassFlaw();
			case CommissionPackage.MENDED_PLACE: return createMendedPlace();
			case CommissionPackage.ACCEPTED_MEND: return createAcceptedMend();
			case CommissionPackage.JOIN_RULE: return createJoinRule();
			default:
				throw new IllegalArgumentException("The class '" + eClass.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object createFromString(EDataType eDataType, String initialValue) {
		switch (eDataType.getClassifierID()) {
			case CommissionPackage.UNIT_SYSTEM:
				return createUnitSystemFromString(eDataType, initialValue);
			case CommissionPackage.LAYER_ROLE:
				return createLayerRoleFromString(eDataType, initialValue);
			case CommissionPackage.FACE:
				return createFaceFromString(eDataType, initialValue);
			case CommissionPackage.MAKING_STATE:
				return createMakingStateFromString(eDataType, initialValue);
			case CommissionPackage.JOIN_KIND:
				return createJoinKindFromString(eDataType, initialValue);
			case CommissionPackage.OPENING_KIND:
				return createOpeningKindFromString(eDataType, initialValue);
			case CommissionPackage.PAINT_KIND:
				return createPaintKindFromString(eDataType, initialValue);
			case CommissionPackage.MEDIUM_BASE:
				return createMediumBaseFromString(eDataType, initialValue);
			case CommissionPackage.SHEET_MATERIAL:
				return createSheetMaterialFromString(eDataType, initialValue);
			case CommissionPackage.TONER_SIDE:
				return createTonerSideFromString(eDataType, initialValue);
			case CommissionPackage.SIGHT_LINE_RULE:
				return createSightLineRuleFromString(eDataType, initialValue);
			case CommissionPackage.TONE_MODE:
				return createToneModeFromString(eDataType, initialValue);
			case CommissionPackage.MIRROR_RULE:
				return createMirrorRuleFromString(eDataType, initialValue);
			case CommissionPackage.END_RULE:
				return createEndRuleFromString(eDataType, initialValue);
			case CommissionPackage.QUOTE_STATE:
				return createQuoteStateFromString(eDataType, initialValue);
			case CommissionPackage.DISPOSITION:
				return createDispositionFromString(eDataType, initialValue);
			case CommissionPackage.MEND_KIND:
				return createMendKindFromString(eDataType, initialValue);
			case CommissionPackage.MOMENT:
				return createMomentFromString(eDataType, initialValue);
			case CommissionPackage.DAY:
				return createDayFromString(eDataType, initialValue);
			case CommissionPackage.OUTLINE:
				return createOutlineFromString(eDataType, initialValue);
			default:
				throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String convertToString(EDataType eDataType, Object instanceValue) {
		switch (eDataType.getClassifierID()) {
			case CommissionPackage.UNIT_SYSTEM:
				return convertUnitSystemToString(eDataType, instanceValue);
			case CommissionPackage.LAYER_ROLE:
				return convertLayerRoleToString(eDataType, instanceValue);
			case CommissionPackage.FACE:
				return convertFaceToString(eDataType, instanceValue);
			case CommissionPackage.MAKING_STATE:
				return convertMakingStateToString(eDataType, instanceValue);
			case CommissionPackage.JOIN_KIND:
				return convertJoinKindToString(eDataType, instanceValue);
			case CommissionPackage.OPENING_KIND:
				return convertOpeningKindToString(eDataType, instanceValue);
			case CommissionPackage.PAINT_KIND:
				return convertPaintKindToString(eDataType, instanceValue);
			case CommissionPackage.MEDIUM_BASE:
				return convertMediumBaseToString(eDataType, instanceValue);
			case CommissionPackage.SHEET_MATERIAL:
				return convertSheetMaterialToString(eDataType, instanceValue);
			case CommissionPackage.TONER_SIDE:
				return convertTonerSideToString(eDataType, instanceValue);
			case CommissionPackage.SIGHT_LINE_RULE:
				return convertSightLineRuleToString(eDataType, instanceValue);
			case CommissionPackage.TONE_MODE:
				return convertToneModeToString(eDataType, instanceValue);
			case CommissionPackage.MIRROR_RULE:
				return convertMirrorRuleToString(eDataType, instanceValue);
			case CommissionPackage.END_RULE:
				return convertEndRuleToString(eDataType, instanceValue);
			case CommissionPackage.QUOTE_STATE:
				return convertQuoteStateToString(eDataType, instanceValue);
			case CommissionPackage.DISPOSITION:
				return convertDispositionToString(eDataType, instanceValue);
			case CommissionPackage.MEND_KIND:
				return convertMendKindToString(eDataType, instanceValue);
			case CommissionPackage.MOMENT:
				return convertMomentToString(eDataType, instanceValue);
			case CommissionPackage.DAY:
				return convertDayToString(eDataType, instanceValue);
			case CommissionPackage.OUTLINE:
				return convertOutlineToString(eDataType, instanceValue);
			default:
				throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MadeFile createMadeFile() {
		MadeFileImpl madeFile = new MadeFileImpl();
		return madeFile;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Studio createStudio() {
		StudioImpl studio = new StudioImpl();
		return studio;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public JoinedCommission createJoinedCommission() {
		JoinedCommissionImpl joinedCommission = new JoinedCommissionImpl();
		return joinedCommission;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PaperSize createPaperSize() {
		PaperSizeImpl paperSize = new PaperSizeImpl();
		return paperSize;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Mesh createMesh() {
		MeshImpl mesh = new MeshImpl();
		return mesh;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ScreenFrame createScreenFrame() {
		ScreenFrameImpl screenFrame = new ScreenFrameImpl();
		return screenFrame;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Paint createPaint() {
		PaintImpl paint = new PaintImpl();
		return paint;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PaintLot createPaintLot() {
		PaintLotImpl paintLot = new PaintLotImpl();
		return paintLot;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Medium createMedium() {
		MediumImpl medium = new MediumImpl();
		return medium;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GlassStock createGlassStock() {
		GlassStockImpl glassStock = new GlassStockImpl();
		return glassStock;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StockSheet createStockSheet() {
		StockSheetImpl stockSheet = new StockSheetImpl();
		return stockSheet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GlassFlaw createGlassFlaw() {
		GlassFlawImpl glassFlaw = new GlassFlawImpl();
		return glassFlaw;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public JoinStock createJoinStock() {
		JoinStockImpl joinStock = new JoinStockImpl();
		return joinStock;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SolderStock createSolderStock() {
		SolderStockImpl solderStock = new SolderStockImpl();
		return solderStock;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BarStock createBarStock() {
		BarStockImpl barStock = new BarStockImpl();
		return barStock;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Kiln createKiln() {
		KilnImpl kiln = new KilnImpl();
		return kiln;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FiringSchedule createFiringSchedule() {
		FiringScheduleImpl firingSchedule = new FiringScheduleImpl();
		return firingSchedule;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FiringSegment createFiringSegment() {
		FiringSegmentImpl firingSegment = new FiringSegmentImpl();
		return firingSegment;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PriceBook createPriceBook() {
		PriceBookImpl priceBook = new PriceBookImpl();
		return priceBook;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PriceItem createPriceItem() {
		PriceItemImpl priceItem = new PriceItemImpl();
		return priceItem;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Printer createPrinter() {
		PrinterImpl printer = new PrinterImpl();
		return printer;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SheetStock createSheetStock() {
		SheetStockImpl sheetStock = new SheetStockImpl();
		return sheetStock;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ToneCalibration createToneCalibration() {
		ToneCalibrationImpl toneCalibration = new ToneCalibrationImpl();
		return toneCalibration;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TonePoint createTonePoint() {
		TonePointImpl tonePoint = new TonePointImpl();
		return tonePoint;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ProcessSetting createProcessSetting() {
		ProcessSettingImpl processSetting = new ProcessSettingImpl();
		return processSetting;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Person createPerson() {
		PersonImpl person = new PersonImpl();
		return person;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Supplier createSupplier() {
		SupplierImpl supplier = new SupplierImpl();
		return supplier;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Commission createCommission() {
		CommissionImpl commission = new CommissionImpl();
		return commission;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Client createClient() {
		ClientImpl client = new ClientImpl();
		return client;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Site createSite() {
		SiteImpl site = new SiteImpl();
		return site;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Milestone createMilestone() {
		MilestoneImpl milestone = new MilestoneImpl();
		return milestone;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quote createQuote() {
		QuoteImpl quote = new QuoteImpl();
		return quote;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public QuoteLine createQuoteLine() {
		QuoteLineImpl quoteLine = new QuoteLineImpl();
		return quoteLine;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Approval createApproval() {
		ApprovalImpl approval = new ApprovalImpl();
		return approval;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Sheet createSheet() {
		SheetImpl sheet = new SheetImpl();
		return sheet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Placement createPlacement() {
		PlacementImpl placement = new PlacementImpl();
		return placement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Window createWindow() {
		WindowImpl window = new WindowImpl();
		return window;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Opening createOpening() {
		OpeningImpl opening = new OpeningImpl();
		return opening;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Colourway createColourway() {
		ColourwayImpl colourway = new ColourwayImpl();
		return colourway;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GlassChoice createGlassChoice() {
		GlassChoiceImpl glassChoice = new GlassChoiceImpl();
		return glassChoice;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Panel createPanel() {
		PanelImpl panel = new PanelImpl();
		return panel;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ArtworkReference createArtworkReference() {
		ArtworkReferenceImpl artworkReference = new ArtworkReferenceImpl();
		return artworkReference;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RoleAssignment createRoleAssignment() {
		RoleAssignmentImpl roleAssignment = new RoleAssignmentImpl();
		return roleAssignment;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Piece createPiece() {
		PieceImpl piece = new PieceImpl();
		return piece;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public AcceptedMend createAcceptedMend() {
		AcceptedMendImpl acceptedMend = new AcceptedMendImpl();
		return acceptedMend;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public JoinRule createJoinRule() {
		JoinRuleImpl joinRule = new JoinRuleImpl();
		return joinRule;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public DesignLayer createDesignLayer() {
		DesignLayerImpl designLayer = new DesignLayerImpl();
		return designLayer;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StencilRecipe createStencilRecipe() {
		StencilRecipeImpl stencilRecipe = new StencilRecipeImpl();
		return stencilRecipe;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MendedPlace createMendedPlace() {
		MendedPlaceImpl mendedPlace = new MendedPlaceImpl();
		return mendedPlace;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Stencil createStencil() {
		StencilImpl stencil = new StencilImpl();
		return stencil;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StencilPiece createStencilPiece() {
		StencilPieceImpl stencilPiece = new StencilPieceImpl();
		return stencilPiece;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Map.Entry<String, String> createSetting() {
		SettingImpl setting = new SettingImpl();
		return setting;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ArtworkBrought createArtworkBrought() {
		ArtworkBroughtImpl artworkBrought = new ArtworkBroughtImpl();
		return artworkBrought;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PiecesMade createPiecesMade() {
		PiecesMadeImpl piecesMade = new PiecesMadeImpl();
		return piecesMade;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StencilMade createStencilMade() {
		StencilMadeImpl stencilMade = new StencilMadeImpl();
		return stencilMade;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SheetMade createSheetMade() {
		SheetMadeImpl sheetMade = new SheetMadeImpl();
		return sheetMade;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public DocumentMade createDocumentMade() {
		DocumentMadeImpl documentMade = new DocumentMadeImpl();
		return documentMade;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ScreenLoad createScreenLoad() {
		ScreenLoadImpl screenLoad = new ScreenLoadImpl();
		return screenLoad;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Reclaim createReclaim() {
		ReclaimImpl reclaim = new ReclaimImpl();
		return reclaim;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PaintMix createPaintMix() {
		PaintMixImpl paintMix = new PaintMixImpl();
		return paintMix;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PrintRun createPrintRun() {
		PrintRunImpl printRun = new PrintRunImpl();
		return printRun;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Firing createFiring() {
		FiringImpl firing = new FiringImpl();
		return firing;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RunSegment createRunSegment() {
		RunSegmentImpl runSegment = new RunSegmentImpl();
		return runSegment;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ShelfPlace createShelfPlace() {
		ShelfPlaceImpl shelfPlace = new ShelfPlaceImpl();
		return shelfPlace;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Glazing createGlazing() {
		GlazingImpl glazing = new GlazingImpl();
		return glazing;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Fixing createFixing() {
		FixingImpl fixing = new FixingImpl();
		return fixing;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Defect createDefect() {
		DefectImpl defect = new DefectImpl();
		return defect;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Remake createRemake() {
		RemakeImpl remake = new RemakeImpl();
		return remake;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Note createNote() {
		NoteImpl note = new NoteImpl();
		return note;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CostLine createCostLine() {
		CostLineImpl costLine = new CostLineImpl();
		return costLine;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StockMove createStockMove() {
		StockMoveImpl stockMove = new StockMoveImpl();
		return stockMove;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Approved createApproved() {
		ApprovedImpl approved = new ApprovedImpl();
		return approved;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public OtherRecord createOtherRecord() {
		OtherRecordImpl otherRecord = new OtherRecordImpl();
		return otherRecord;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public UnitSystem createUnitSystemFromString(EDataType eDataType, String initialValue) {
		UnitSystem result = UnitSystem.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertUnitSystemToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LayerRole createLayerRoleFromString(EDataType eDataType, String initialValue) {
		LayerRole result = LayerRole.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLayerRoleToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Face createFaceFromString(EDataType eDataType, String initialValue) {
		Face result = Face.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertFaceToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public MakingState createMakingStateFromString(EDataType eDataType, String initialValue) {
		MakingState result = MakingState.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMakingStateToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public JoinKind createJoinKindFromString(EDataType eDataType, String initialValue) {
		JoinKind result = JoinKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertJoinKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public OpeningKind createOpeningKindFromString(EDataType eDataType, String initialValue) {
		OpeningKind result = OpeningKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertOpeningKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public PaintKind createPaintKindFromString(EDataType eDataType, String initialValue) {
		PaintKind result = PaintKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPaintKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public MediumBase createMediumBaseFromString(EDataType eDataType, String initialValue) {
		MediumBase result = MediumBase.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMediumBaseToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public SheetMaterial createSheetMaterialFromString(EDataType eDataType, String initialValue) {
		SheetMaterial result = SheetMaterial.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSheetMaterialToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public TonerSide createTonerSideFromString(EDataType eDataType, String initialValue) {
		TonerSide result = TonerSide.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTonerSideToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public SightLineRule createSightLineRuleFromString(EDataType eDataType, String initialValue) {
		SightLineRule result = SightLineRule.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSightLineRuleToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ToneMode createToneModeFromString(EDataType eDataType, String initialValue) {
		ToneMode result = ToneMode.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertToneModeToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public MirrorRule createMirrorRuleFromString(EDataType eDataType, String initialValue) {
		MirrorRule result = MirrorRule.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMirrorRuleToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public EndRule createEndRuleFromString(EDataType eDataType, String initialValue) {
		EndRule result = EndRule.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertEndRuleToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public MendKind createMendKindFromString(EDataType eDataType, String initialValue) {
		MendKind result = MendKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMendKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public QuoteState createQuoteStateFromString(EDataType eDataType, String initialValue) {
		QuoteState result = QuoteState.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertQuoteStateToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Disposition createDispositionFromString(EDataType eDataType, String initialValue) {
		Disposition result = Disposition.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDispositionToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Instant createMoment(final String it) {
		return it == null ? null : java.time.Instant.parse(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Instant createMomentFromString(EDataType eDataType, String initialValue) {
		return createMoment(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMoment(final Instant it) {
		return it == null ? null : it.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMomentToString(EDataType eDataType, Object instanceValue) {
		return convertMoment((Instant)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LocalDate createDay(final String it) {
		return it == null ? null : java.time.LocalDate.parse(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LocalDate createDayFromString(EDataType eDataType, String initialValue) {
		return createDay(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDay(final LocalDate it) {
		return it == null ? null : it.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDayToString(EDataType eDataType, Object instanceValue) {
		return convertDay((LocalDate)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public OutlineMm createOutline(final String it) {
		return it == null ? null : saddlebar.model.art.OutlineMm.parse(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public OutlineMm createOutlineFromString(EDataType eDataType, String initialValue) {
		return createOutline(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertOutline(final OutlineMm it) {
		return it == null ? null : it.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertOutlineToString(EDataType eDataType, Object instanceValue) {
		return convertOutline((OutlineMm)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CommissionPackage getCommissionPackage() {
		return (CommissionPackage)getEPackage();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @deprecated
	 * @generated
	 */
	@Deprecated
	public static CommissionPackage getPackage() {
		return CommissionPackage.eINSTANCE;
	}

} //CommissionFactoryImpl
