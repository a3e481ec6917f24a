/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Stencil Recipe</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * How a layer becomes dots. Intent: may change at any time; what was made is in the records.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.StencilRecipe#getLayer <em>Layer</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilRecipe#getMethod <em>Method</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilRecipe#getDpi <em>Dpi</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilRecipe#getLpi <em>Lpi</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilRecipe#getAngleDeg <em>Angle Deg</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilRecipe#getDot <em>Dot</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilRecipe#getDotMm <em>Dot Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilRecipe#getFilter <em>Filter</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilRecipe#getSeed <em>Seed</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilRecipe#getToneMode <em>Tone Mode</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilRecipe#getToneFrom <em>Tone From</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilRecipe#getToneTo <em>Tone To</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilRecipe#getCalibration <em>Calibration</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilRecipe#getEndLow <em>End Low</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilRecipe#getEndHigh <em>End High</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilRecipe#getEndRule <em>End Rule</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilRecipe#getProcessKey <em>Process Key</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilRecipe#getMirror <em>Mirror</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilRecipe#getOpenMm <em>Open Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilRecipe#getBridgeMm <em>Bridge Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilRecipe#getCourse <em>Course</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilRecipe#getCourseLayer <em>Course Layer</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilRecipe#getNoiseSide <em>Noise Side</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilRecipe#getClump <em>Clump</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilRecipe#getSupercell <em>Supercell</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilRecipe#getCurve <em>Curve</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilRecipe#getTrapMm <em>Trap Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilRecipe#getMends <em>Mends</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getStencilRecipe()
 * @model
 * @generated
 */
public interface StencilRecipe extends EObject {
	/**
	 * Returns the value of the '<em><b>Layer</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.DesignLayer#getRecipe <em>Recipe</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Layer</em>' container reference.
	 * @see #setLayer(DesignLayer)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilRecipe_Layer()
	 * @see saddlebar.model.commission.DesignLayer#getRecipe
	 * @model opposite="recipe" resolveProxies="false" transient="false"
	 * @generated
	 */
	DesignLayer getLayer();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilRecipe#getLayer <em>Layer</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Layer</em>' container reference.
	 * @see #getLayer()
	 * @generated
	 */
	void setLayer(DesignLayer value);

	/**
	 * Returns the value of the '<em><b>Method</b></em>' attribute.
	 * The default value is <code>"am"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Key of the screening method.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Method</em>' attribute.
	 * @see #setMethod(String)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilRecipe_Method()
	 * @model default="am"
	 * @generated
	 */
	String getMethod();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilRecipe#getMethod <em>Method</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Method</em>' attribute.
	 * @see #getMethod()
	 * @generated
	 */
	void setMethod(String value);

	/**
	 * Returns the value of the '<em><b>Dpi</b></em>' attribute.
	 * The default value is <code>"1200"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Dpi</em>' attribute.
	 * @see #setDpi(int)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilRecipe_Dpi()
	 * @model default="1200"
	 * @generated
	 */
	int getDpi();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilRecipe#getDpi <em>Dpi</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dpi</em>' attribute.
	 * @see #getDpi()
	 * @generated
	 */
	void setDpi(int value);

	/**
	 * Returns the value of the '<em><b>Lpi</b></em>' attribute.
	 * The default value is <code>"40"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lpi</em>' attribute.
	 * @see #setLpi(double)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilRecipe_Lpi()
	 * @model default="40"
	 * @generated
	 */
	double getLpi();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilRecipe#getLpi <em>Lpi</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lpi</em>' attribute.
	 * @see #getLpi()
	 * @generated
	 */
	void setLpi(double value);

	/**
	 * Returns the value of the '<em><b>Angle Deg</b></em>' attribute.
	 * The default value is <code>"22.5"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Angle Deg</em>' attribute.
	 * @see #setAngleDeg(double)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilRecipe_AngleDeg()
	 * @model default="22.5"
	 * @generated
	 */
	double getAngleDeg();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilRecipe#getAngleDeg <em>Angle Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Angle Deg</em>' attribute.
	 * @see #getAngleDeg()
	 * @generated
	 */
	void setAngleDeg(double value);

	/**
	 * Returns the value of the '<em><b>Dot</b></em>' attribute.
	 * The default value is <code>"round"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Dot</em>' attribute.
	 * @see #setDot(String)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilRecipe_Dot()
	 * @model default="round"
	 * @generated
	 */
	String getDot();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilRecipe#getDot <em>Dot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dot</em>' attribute.
	 * @see #getDot()
	 * @generated
	 */
	void setDot(String value);

	/**
	 * Returns the value of the '<em><b>Dot Mm</b></em>' attribute.
	 * The default value is <code>"0.254"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of scattered dots.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Dot Mm</em>' attribute.
	 * @see #setDotMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilRecipe_DotMm()
	 * @model default="0.254"
	 * @generated
	 */
	double getDotMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilRecipe#getDotMm <em>Dot Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dot Mm</em>' attribute.
	 * @see #getDotMm()
	 * @generated
	 */
	void setDotMm(double value);

	/**
	 * Returns the value of the '<em><b>Filter</b></em>' attribute.
	 * The default value is <code>"floyd-steinberg"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Filter</em>' attribute.
	 * @see #setFilter(String)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilRecipe_Filter()
	 * @model default="floyd-steinberg"
	 * @generated
	 */
	String getFilter();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilRecipe#getFilter <em>Filter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Filter</em>' attribute.
	 * @see #getFilter()
	 * @generated
	 */
	void setFilter(String value);

	/**
	 * Returns the value of the '<em><b>Seed</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * For methods that scatter.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Seed</em>' attribute.
	 * @see #setSeed(long)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilRecipe_Seed()
	 * @model default="1"
	 * @generated
	 */
	long getSeed();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilRecipe#getSeed <em>Seed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Seed</em>' attribute.
	 * @see #getSeed()
	 * @generated
	 */
	void setSeed(long value);

	/**
	 * Returns the value of the '<em><b>Tone Mode</b></em>' attribute.
	 * The literals are from the enumeration {@link saddlebar.model.commission.ToneMode}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Tone Mode</em>' attribute.
	 * @see saddlebar.model.commission.ToneMode
	 * @see #setToneMode(ToneMode)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilRecipe_ToneMode()
	 * @model
	 * @generated
	 */
	ToneMode getToneMode();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilRecipe#getToneMode <em>Tone Mode</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tone Mode</em>' attribute.
	 * @see saddlebar.model.commission.ToneMode
	 * @see #getToneMode()
	 * @generated
	 */
	void setToneMode(ToneMode value);

	/**
	 * Returns the value of the '<em><b>Tone From</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Darkness of the drawing that is bare glass.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tone From</em>' attribute.
	 * @see #setToneFrom(double)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilRecipe_ToneFrom()
	 * @model default="0"
	 * @generated
	 */
	double getToneFrom();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilRecipe#getToneFrom <em>Tone From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tone From</em>' attribute.
	 * @see #getToneFrom()
	 * @generated
	 */
	void setToneFrom(double value);

	/**
	 * Returns the value of the '<em><b>Tone To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Darkness that is solid paint; absent: the layer's 99.5th percentile.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tone To</em>' attribute.
	 * @see #setToneTo(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilRecipe_ToneTo()
	 * @model
	 * @generated
	 */
	Double getToneTo();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilRecipe#getToneTo <em>Tone To</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tone To</em>' attribute.
	 * @see #getToneTo()
	 * @generated
	 */
	void setToneTo(Double value);

	/**
	 * Returns the value of the '<em><b>Calibration</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Calibration</em>' reference.
	 * @see #setCalibration(ToneCalibration)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilRecipe_Calibration()
	 * @model
	 * @generated
	 */
	ToneCalibration getCalibration();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilRecipe#getCalibration <em>Calibration</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Calibration</em>' reference.
	 * @see #getCalibration()
	 * @generated
	 */
	void setCalibration(ToneCalibration value);

	/**
	 * Returns the value of the '<em><b>End Low</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Palest coverage that holds; 0: no limit.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>End Low</em>' attribute.
	 * @see #setEndLow(double)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilRecipe_EndLow()
	 * @model default="0"
	 * @generated
	 */
	double getEndLow();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilRecipe#getEndLow <em>End Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>End Low</em>' attribute.
	 * @see #getEndLow()
	 * @generated
	 */
	void setEndLow(double value);

	/**
	 * Returns the value of the '<em><b>End High</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Darkest coverage that stays open between dots; 1: no limit.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>End High</em>' attribute.
	 * @see #setEndHigh(double)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilRecipe_EndHigh()
	 * @model default="1"
	 * @generated
	 */
	double getEndHigh();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilRecipe#getEndHigh <em>End High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>End High</em>' attribute.
	 * @see #getEndHigh()
	 * @generated
	 */
	void setEndHigh(double value);

	/**
	 * Returns the value of the '<em><b>End Rule</b></em>' attribute.
	 * The literals are from the enumeration {@link saddlebar.model.commission.EndRule}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>End Rule</em>' attribute.
	 * @see saddlebar.model.commission.EndRule
	 * @see #setEndRule(EndRule)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilRecipe_EndRule()
	 * @model
	 * @generated
	 */
	EndRule getEndRule();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilRecipe#getEndRule <em>End Rule</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>End Rule</em>' attribute.
	 * @see saddlebar.model.commission.EndRule
	 * @see #getEndRule()
	 * @generated
	 */
	void setEndRule(EndRule value);

	/**
	 * Returns the value of the '<em><b>Process Key</b></em>' attribute.
	 * The default value is <code>"fused-sheet"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Process Key</em>' attribute.
	 * @see #setProcessKey(String)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilRecipe_ProcessKey()
	 * @model default="fused-sheet"
	 * @generated
	 */
	String getProcessKey();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilRecipe#getProcessKey <em>Process Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Process Key</em>' attribute.
	 * @see #getProcessKey()
	 * @generated
	 */
	void setProcessKey(String value);

	/**
	 * Returns the value of the '<em><b>Mirror</b></em>' attribute.
	 * The literals are from the enumeration {@link saddlebar.model.commission.MirrorRule}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Mirror</em>' attribute.
	 * @see saddlebar.model.commission.MirrorRule
	 * @see #setMirror(MirrorRule)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilRecipe_Mirror()
	 * @model
	 * @generated
	 */
	MirrorRule getMirror();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilRecipe#getMirror <em>Mirror</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mirror</em>' attribute.
	 * @see saddlebar.model.commission.MirrorRule
	 * @see #getMirror()
	 * @generated
	 */
	void setMirror(MirrorRule value);

	/**
	 * Returns the value of the '<em><b>Open Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Finest opening; absent: from the mesh.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Open Mm</em>' attribute.
	 * @see #setOpenMm(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilRecipe_OpenMm()
	 * @model
	 * @generated
	 */
	Double getOpenMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilRecipe#getOpenMm <em>Open Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Open Mm</em>' attribute.
	 * @see #getOpenMm()
	 * @generated
	 */
	void setOpenMm(Double value);

	/**
	 * Returns the value of the '<em><b>Bridge Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Finest bridge; absent: from the mesh.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bridge Mm</em>' attribute.
	 * @see #setBridgeMm(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilRecipe_BridgeMm()
	 * @model
	 * @generated
	 */
	Double getBridgeMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilRecipe#getBridgeMm <em>Bridge Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bridge Mm</em>' attribute.
	 * @see #getBridgeMm()
	 * @generated
	 */
	void setBridgeMm(Double value);

	/**
	 * Returns the value of the '<em><b>Course</b></em>' attribute.
	 * The default value is <code>"straight"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How the lines of a line screen run: straight, rings, waves or artwork, with their numbers.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Course</em>' attribute.
	 * @see #setCourse(String)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilRecipe_Course()
	 * @model default="straight"
	 * @generated
	 */
	String getCourse();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilRecipe#getCourse <em>Course</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Course</em>' attribute.
	 * @see #getCourse()
	 * @generated
	 */
	void setCourse(String value);

	/**
	 * Returns the value of the '<em><b>Course Layer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Layer of the artwork whose drawing leads the lines; absent: the layer itself.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Course Layer</em>' attribute.
	 * @see #setCourseLayer(String)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilRecipe_CourseLayer()
	 * @model
	 * @generated
	 */
	String getCourseLayer();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilRecipe#getCourseLayer <em>Course Layer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Course Layer</em>' attribute.
	 * @see #getCourseLayer()
	 * @generated
	 */
	void setCourseLayer(String value);

	/**
	 * Returns the value of the '<em><b>Noise Side</b></em>' attribute.
	 * The default value is <code>"64"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Side of the blue-noise array in dots.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Noise Side</em>' attribute.
	 * @see #setNoiseSide(int)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilRecipe_NoiseSide()
	 * @model default="64"
	 * @generated
	 */
	int getNoiseSide();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilRecipe#getNoiseSide <em>Noise Side</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Noise Side</em>' attribute.
	 * @see #getNoiseSide()
	 * @generated
	 */
	void setNoiseSide(int value);

	/**
	 * Returns the value of the '<em><b>Clump</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How strongly scattered dots gather in clusters, 0 to 2.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Clump</em>' attribute.
	 * @see #setClump(double)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilRecipe_Clump()
	 * @model default="1"
	 * @generated
	 */
	double getClump();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilRecipe#getClump <em>Clump</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Clump</em>' attribute.
	 * @see #getClump()
	 * @generated
	 */
	void setClump(double value);

	/**
	 * Returns the value of the '<em><b>Supercell</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Cells along a tile of an exact ruling; 0: as many as the angle needs.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Supercell</em>' attribute.
	 * @see #setSupercell(int)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilRecipe_Supercell()
	 * @model default="0"
	 * @generated
	 */
	int getSupercell();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilRecipe#getSupercell <em>Supercell</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Supercell</em>' attribute.
	 * @see #getSupercell()
	 * @generated
	 */
	void setSupercell(int value);

	/**
	 * Returns the value of the '<em><b>Curve</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Tone curve drawn by hand: points wanted:screened in shares, ascending; absent: none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Curve</em>' attribute.
	 * @see #setCurve(String)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilRecipe_Curve()
	 * @model
	 * @generated
	 */
	String getCurve();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilRecipe#getCurve <em>Curve</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Curve</em>' attribute.
	 * @see #getCurve()
	 * @generated
	 */
	void setCurve(String value);

	/**
	 * Returns the value of the '<em><b>Trap Mm</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How far layers that meet this one are to overlap it, so that no bare glass shows between them; 0: not asked.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Trap Mm</em>' attribute.
	 * @see #setTrapMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilRecipe_TrapMm()
	 * @model default="0"
	 * @generated
	 */
	double getTrapMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilRecipe#getTrapMm <em>Trap Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Trap Mm</em>' attribute.
	 * @see #getTrapMm()
	 * @generated
	 */
	void setTrapMm(double value);

	/**
	 * Returns the value of the '<em><b>Mends</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.MendedPlace}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.MendedPlace#getRecipe <em>Recipe</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Places made wider than they were screened, so that they print or hold.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Mends</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getStencilRecipe_Mends()
	 * @see saddlebar.model.commission.MendedPlace#getRecipe
	 * @model opposite="recipe" containment="true"
	 * @generated
	 */
	EList<MendedPlace> getMends();

} // StencilRecipe
