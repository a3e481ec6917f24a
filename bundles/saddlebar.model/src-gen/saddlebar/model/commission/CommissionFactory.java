/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.ecore.EFactory;

/**
 * <!-- begin-user-doc -->
 * The <b>Factory</b> for the model.
 * It provides a create method for each non-abstract class of the model.
 * <!-- end-user-doc -->
 * @see saddlebar.model.commission.CommissionPackage
 * @generated
 */
public interface CommissionFactory extends EFactory {
	/**
	 * The singleton instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	CommissionFactory eINSTANCE = saddlebar.model.commission.impl.CommissionFactoryImpl.init();

	/**
	 * Returns a new object of class '<em>Made File</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Made File</em>'.
	 * @generated
	 */
	MadeFile createMadeFile();

	/**
	 * Returns a new object of class '<em>Studio</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Studio</em>'.
	 * @generated
	 */
	Studio createStudio();

	/**
	 * Returns a new object of class '<em>Joined Commission</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Joined Commission</em>'.
	 * @generated
	 */
	JoinedCommission createJoinedCommission();

	/**
	 * Returns a new object of class '<em>Paper Size</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Paper Size</em>'.
	 * @generated
	 */
	PaperSize createPaperSize();

	/**
	 * Returns a new object of class '<em>Mesh</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Mesh</em>'.
	 * @generated
	 */
	Mesh createMesh();

	/**
	 * Returns a new object of class '<em>Screen Frame</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Screen Frame</em>'.
	 * @generated
	 */
	ScreenFrame createScreenFrame();

	/**
	 * Returns a new object of class '<em>Paint</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Paint</em>'.
	 * @generated
	 */
	Paint createPaint();

	/**
	 * Returns a new object of class '<em>Paint Lot</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Paint Lot</em>'.
	 * @generated
	 */
	PaintLot createPaintLot();

	/**
	 * Returns a new object of class '<em>Medium</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Medium</em>'.
	 * @generated
	 */
	Medium createMedium();

	/**
	 * Returns a new object of class '<em>Glass Stock</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Glass Stock</em>'.
	 * @generated
	 */
	GlassStock createGlassStock();

	/**
	 * Returns a new object of class '<em>Stock Sheet</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Stock Sheet</em>'.
	 * @generated
	 */
	StockSheet createStockSheet();

	/**
	 * Returns a new object of class '<em>Glass Flaw</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Glass Flaw</em>'.
	 * @generated
	 */
	GlassFlaw createGlassFlaw();

	/**
	 * Returns a new object of class '<em>Join Stock</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Join Stock</em>'.
	 * @generated
	 */
	JoinStock createJoinStock();

	/**
	 * Returns a new object of class '<em>Solder Stock</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Solder Stock</em>'.
	 * @generated
	 */
	SolderStock createSolderStock();

	/**
	 * Returns a new object of class '<em>Bar Stock</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Bar Stock</em>'.
	 * @generated
	 */
	BarStock createBarStock();

	/**
	 * Returns a new object of class '<em>Kiln</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Kiln</em>'.
	 * @generated
	 */
	Kiln createKiln();

	/**
	 * Returns a new object of class '<em>Firing Schedule</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Firing Schedule</em>'.
	 * @generated
	 */
	FiringSchedule createFiringSchedule();

	/**
	 * Returns a new object of class '<em>Firing Segment</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Firing Segment</em>'.
	 * @generated
	 */
	FiringSegment createFiringSegment();

	/**
	 * Returns a new object of class '<em>Price Book</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Price Book</em>'.
	 * @generated
	 */
	PriceBook createPriceBook();

	/**
	 * Returns a new object of class '<em>Price Item</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Price Item</em>'.
	 * @generated
	 */
	PriceItem createPriceItem();

	/**
	 * Returns a new object of class '<em>Printer</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Printer</em>'.
	 * @generated
	 */
	Printer createPrinter();

	/**
	 * Returns a new object of class '<em>Sheet Stock</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Sheet Stock</em>'.
	 * @generated
	 */
	SheetStock createSheetStock();

	/**
	 * Returns a new object of class '<em>Tone Calibration</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Tone Calibration</em>'.
	 * @generated
	 */
	ToneCalibration createToneCalibration();

	/**
	 * Returns a new object of class '<em>Tone Point</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Tone Point</em>'.
	 * @generated
	 */
	TonePoint createTonePoint();

	/**
	 * Returns a new object of class '<em>Process Setting</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Process Setting</em>'.
	 * @generated
	 */
	ProcessSetting createProcessSetting();

	/**
	 * Returns a new object of class '<em>Person</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Person</em>'.
	 * @generated
	 */
	Person createPerson();

	/**
	 * Returns a new object of class '<em>Supplier</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Supplier</em>'.
	 * @generated
	 */
	Supplier createSupplier();

	/**
	 * Returns a new object of class '<em>Commission</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Commission</em>'.
	 * @generated
	 */
	Commission createCommission();

	/**
	 * Returns a new object of class '<em>Client</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Client</em>'.
	 * @generated
	 */
	Client createClient();

	/**
	 * Returns a new object of class '<em>Site</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Site</em>'.
	 * @generated
	 */
	Site createSite();

	/**
	 * Returns a new object of class '<em>Milestone</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Milestone</em>'.
	 * @generated
	 */
	Milestone createMilestone();

	/**
	 * Returns a new object of class '<em>Quote</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Quote</em>'.
	 * @generated
	 */
	Quote createQuote();

	/**
	 * Returns a new object of class '<em>Quote Line</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Quote Line</em>'.
	 * @generated
	 */
	QuoteLine createQuoteLine();

	/**
	 * Returns a new object of class '<em>Approval</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Approval</em>'.
	 * @generated
	 */
	Approval createApproval();

	/**
	 * Returns a new object of class '<em>Sheet</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Sheet</em>'.
	 * @generated
	 */
	Sheet createSheet();

	/**
	 * Returns a new object of class '<em>Placement</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Placement</em>'.
	 * @generated
	 */
	Placement createPlacement();

	/**
	 * Returns a new object of class '<em>Window</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Window</em>'.
	 * @generated
	 */
	Window createWindow();

	/**
	 * Returns a new object of class '<em>Opening</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Opening</em>'.
	 * @generated
	 */
	Opening createOpening();

	/**
	 * Returns a new object of class '<em>Colourway</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Colourway</em>'.
	 * @generated
	 */
	Colourway createColourway();

	/**
	 * Returns a new object of class '<em>Glass Choice</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Glass Choice</em>'.
	 * @generated
	 */
	GlassChoice createGlassChoice();

	/**
	 * Returns a new object of class '<em>Panel</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Panel</em>'.
	 * @generated
	 */
	Panel createPanel();

	/**
	 * Returns a new object of class '<em>Artwork Reference</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Artwork Reference</em>'.
	 * @generated
	 */
	ArtworkReference createArtworkReference();

	/**
	 * Returns a new object of class '<em>Role Assignment</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Role Assignment</em>'.
	 * @generated
	 */
	RoleAssignment createRoleAssignment();

	/**
	 * Returns a new object of class '<em>Piece</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Piece</em>'.
	 * @generated
	 */
	Piece createPiece();

	/**
	 * Returns a new object of class '<em>Accepted Mend</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Accepted Mend</em>'.
	 * @generated
	 */
	AcceptedMend createAcceptedMend();

	/**
	 * Returns a new object of class '<em>Join Rule</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Join Rule</em>'.
	 * @generated
	 */
	JoinRule createJoinRule();

	/**
	 * Returns a new object of class '<em>Design Layer</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Design Layer</em>'.
	 * @generated
	 */
	DesignLayer createDesignLayer();

	/**
	 * Returns a new object of class '<em>Stencil Recipe</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Stencil Recipe</em>'.
	 * @generated
	 */
	StencilRecipe createStencilRecipe();

	/**
	 * Returns a new object of class '<em>Mended Place</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Mended Place</em>'.
	 * @generated
	 */
	MendedPlace createMendedPlace();

	/**
	 * Returns a new object of class '<em>Stencil</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Stencil</em>'.
	 * @generated
	 */
	Stencil createStencil();

	/**
	 * Returns a new object of class '<em>Stencil Piece</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Stencil Piece</em>'.
	 * @generated
	 */
	StencilPiece createStencilPiece();

	/**
	 * Returns a new object of class '<em>Artwork Brought</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Artwork Brought</em>'.
	 * @generated
	 */
	ArtworkBrought createArtworkBrought();

	/**
	 * Returns a new object of class '<em>Pieces Made</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Pieces Made</em>'.
	 * @generated
	 */
	PiecesMade createPiecesMade();

	/**
	 * Returns a new object of class '<em>Stencil Made</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Stencil Made</em>'.
	 * @generated
	 */
	StencilMade createStencilMade();

	/**
	 * Returns a new object of class '<em>Sheet Made</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Sheet Made</em>'.
	 * @generated
	 */
	SheetMade createSheetMade();

	/**
	 * Returns a new object of class '<em>Document Made</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Document Made</em>'.
	 * @generated
	 */
	DocumentMade createDocumentMade();

	/**
	 * Returns a new object of class '<em>Screen Load</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Screen Load</em>'.
	 * @generated
	 */
	ScreenLoad createScreenLoad();

	/**
	 * Returns a new object of class '<em>Reclaim</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Reclaim</em>'.
	 * @generated
	 */
	Reclaim createReclaim();

	/**
	 * Returns a new object of class '<em>Paint Mix</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Paint Mix</em>'.
	 * @generated
	 */
	PaintMix createPaintMix();

	/**
	 * Returns a new object of class '<em>Print Run</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Print Run</em>'.
	 * @generated
	 */
	PrintRun createPrintRun();

	/**
	 * Returns a new object of class '<em>Firing</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Firing</em>'.
	 * @generated
	 */
	Firing createFiring();

	/**
	 * Returns a new object of class '<em>Run Segment</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Run Segment</em>'.
	 * @generated
	 */
	RunSegment createRunSegment();

	/**
	 * Returns a new object of class '<em>Shelf Place</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Shelf Place</em>'.
	 * @generated
	 */
	ShelfPlace createShelfPlace();

	/**
	 * Returns a new object of class '<em>Glazing</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Glazing</em>'.
	 * @generated
	 */
	Glazing createGlazing();

	/**
	 * Returns a new object of class '<em>Fixing</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Fixing</em>'.
	 * @generated
	 */
	Fixing createFixing();

	/**
	 * Returns a new object of class '<em>Defect</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Defect</em>'.
	 * @generated
	 */
	Defect createDefect();

	/**
	 * Returns a new object of class '<em>Remake</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Remake</em>'.
	 * @generated
	 */
	Remake createRemake();

	/**
	 * Returns a new object of class '<em>Note</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Note</em>'.
	 * @generated
	 */
	Note createNote();

	/**
	 * Returns a new object of class '<em>Cost Line</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Cost Line</em>'.
	 * @generated
	 */
	CostLine createCostLine();

	/**
	 * Returns a new object of class '<em>Stock Move</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Stock Move</em>'.
	 * @generated
	 */
	StockMove createStockMove();

	/**
	 * Returns a new object of class '<em>Approved</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Approved</em>'.
	 * @generated
	 */
	Approved createApproved();

	/**
	 * Returns a new object of class '<em>Other Record</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Other Record</em>'.
	 * @generated
	 */
	OtherRecord createOtherRecord();

	/**
	 * Returns the package supported by this factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the package supported by this factory.
	 * @generated
	 */
	CommissionPackage getCommissionPackage();

} //CommissionFactory
