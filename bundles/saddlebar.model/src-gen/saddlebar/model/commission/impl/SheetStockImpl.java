/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import java.math.BigDecimal;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EcoreUtil;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.SheetMaterial;
import saddlebar.model.commission.SheetStock;
import saddlebar.model.commission.Studio;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Sheet Stock</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.SheetStockImpl#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SheetStockImpl#getMaterial <em>Material</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SheetStockImpl#getPaper <em>Paper</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SheetStockImpl#getInStock <em>In Stock</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SheetStockImpl#getPricePerSheet <em>Price Per Sheet</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SheetStockImpl extends NamedImpl implements SheetStock {
	/**
	 * The default value of the '{@link #getMaterial() <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterial()
	 * @generated
	 * @ordered
	 */
	protected static final SheetMaterial MATERIAL_EDEFAULT = SheetMaterial.FUSED_FILM;

	/**
	 * The cached value of the '{@link #getMaterial() <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterial()
	 * @generated
	 * @ordered
	 */
	protected SheetMaterial material = MATERIAL_EDEFAULT;

	/**
	 * The default value of the '{@link #getPaper() <em>Paper</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPaper()
	 * @generated
	 * @ordered
	 */
	protected static final String PAPER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPaper() <em>Paper</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPaper()
	 * @generated
	 * @ordered
	 */
	protected String paper = PAPER_EDEFAULT;

	/**
	 * The default value of the '{@link #getInStock() <em>In Stock</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInStock()
	 * @generated
	 * @ordered
	 */
	protected static final int IN_STOCK_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getInStock() <em>In Stock</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInStock()
	 * @generated
	 * @ordered
	 */
	protected int inStock = IN_STOCK_EDEFAULT;

	/**
	 * The default value of the '{@link #getPricePerSheet() <em>Price Per Sheet</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPricePerSheet()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal PRICE_PER_SHEET_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPricePerSheet() <em>Price Per Sheet</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPricePerSheet()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal pricePerSheet = PRICE_PER_SHEET_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SheetStockImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.SHEET_STOCK;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Studio getStudio() {
		if (eContainerFeatureID() != CommissionPackage.SHEET_STOCK__STUDIO) return null;
		return (Studio)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetStudio(Studio newStudio, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newStudio, CommissionPackage.SHEET_STOCK__STUDIO, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStudio(Studio newStudio) {
		if (newStudio != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.SHEET_STOCK__STUDIO && newStudio != null)) {
			if (EcoreUtil.isAncestor(this, newStudio))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newStudio != null)
				msgs = ((InternalEObject)newStudio).eInverseAdd(this, CommissionPackage.STUDIO__SHEET_STOCK, Studio.class, msgs);
			msgs = basicSetStudio(newStudio, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SHEET_STOCK__STUDIO, newStudio, newStudio));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SheetMaterial getMaterial() {
		return material;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaterial(SheetMaterial newMaterial) {
		SheetMaterial oldMaterial = material;
		material = newMaterial == null ? MATERIAL_EDEFAULT : newMaterial;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SHEET_STOCK__MATERIAL, oldMaterial, material));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPaper() {
		return paper;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPaper(String newPaper) {
		String oldPaper = paper;
		paper = newPaper;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SHEET_STOCK__PAPER, oldPaper, paper));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getInStock() {
		return inStock;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInStock(int newInStock) {
		int oldInStock = inStock;
		inStock = newInStock;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SHEET_STOCK__IN_STOCK, oldInStock, inStock));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getPricePerSheet() {
		return pricePerSheet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPricePerSheet(BigDecimal newPricePerSheet) {
		BigDecimal oldPricePerSheet = pricePerSheet;
		pricePerSheet = newPricePerSheet;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SHEET_STOCK__PRICE_PER_SHEET, oldPricePerSheet, pricePerSheet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseAdd(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.SHEET_STOCK__STUDIO:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetStudio((Studio)otherEnd, msgs);
		}
		return super.eInverseAdd(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.SHEET_STOCK__STUDIO:
				return basicSetStudio(null, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eBasicRemoveFromContainerFeature(NotificationChain msgs) {
		switch (eContainerFeatureID()) {
			case CommissionPackage.SHEET_STOCK__STUDIO:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.STUDIO__SHEET_STOCK, Studio.class, msgs);
		}
		return super.eBasicRemoveFromContainerFeature(msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case CommissionPackage.SHEET_STOCK__STUDIO:
				return getStudio();
			case CommissionPackage.SHEET_STOCK__MATERIAL:
				return getMaterial();
			case CommissionPackage.SHEET_STOCK__PAPER:
				return getPaper();
			case CommissionPackage.SHEET_STOCK__IN_STOCK:
				return getInStock();
			case CommissionPackage.SHEET_STOCK__PRICE_PER_SHEET:
				return getPricePerSheet();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case CommissionPackage.SHEET_STOCK__STUDIO:
				setStudio((Studio)newValue);
				return;
			case CommissionPackage.SHEET_STOCK__MATERIAL:
				setMaterial((SheetMaterial)newValue);
				return;
			case CommissionPackage.SHEET_STOCK__PAPER:
				setPaper((String)newValue);
				return;
			case CommissionPackage.SHEET_STOCK__IN_STOCK:
				setInStock((Integer)newValue);
				return;
			case CommissionPackage.SHEET_STOCK__PRICE_PER_SHEET:
				setPricePerSheet((BigDecimal)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case CommissionPackage.SHEET_STOCK__STUDIO:
				setStudio((Studio)null);
				return;
			case CommissionPackage.SHEET_STOCK__MATERIAL:
				setMaterial(MATERIAL_EDEFAULT);
				return;
			case CommissionPackage.SHEET_STOCK__PAPER:
				setPaper(PAPER_EDEFAULT);
				return;
			case CommissionPackage.SHEET_STOCK__IN_STOCK:
				setInStock(IN_STOCK_EDEFAULT);
				return;
			case CommissionPackage.SHEET_STOCK__PRICE_PER_SHEET:
				setPricePerSheet(PRICE_PER_SHEET_EDEFAULT);
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case CommissionPackage.SHEET_STOCK__STUDIO:
				return getStudio() != null;
			case CommissionPackage.SHEET_STOCK__MATERIAL:
				return material != MATERIAL_EDEFAULT;
			case CommissionPackage.SHEET_STOCK__PAPER:
				return PAPER_EDEFAULT == null ? paper != null : !PAPER_EDEFAULT.equals(paper);
			case CommissionPackage.SHEET_STOCK__IN_STOCK:
				return inStock != IN_STOCK_EDEFAULT;
			case CommissionPackage.SHEET_STOCK__PRICE_PER_SHEET:
				return PRICE_PER_SHEET_EDEFAULT == null ? pricePerSheet != null : !PRICE_PER_SHEET_EDEFAULT.equals(pricePerSheet);
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (material: ");
		result.append(material);
		result.append(", paper: ");
		result.append(paper);
		result.append(", inStock: ");
		result.append(inStock);
		result.append(", pricePerSheet: ");
		result.append(pricePerSheet);
		result.append(')');
		return result.toString();
	}

} //SheetStockImpl
