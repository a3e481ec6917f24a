/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Sheet Material</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What stencils are printed on.
 * <!-- end-model-doc -->
 * @see saddlebar.model.commission.CommissionPackage#getSheetMaterial()
 * @model
 * @generated
 */
public enum SheetMaterial implements Enumerator {
	/**
	 * The '<em><b>FUSED FILM</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Heat-transfer stencil film: toner is fused to the mesh.
	 * <!-- end-model-doc -->
	 * @see #FUSED_FILM_VALUE
	 * @generated
	 * @ordered
	 */
	FUSED_FILM(0, "FUSED_FILM", "fused film"),

	/**
	 * The '<em><b>POSITIVE FILM</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Clear film that shades an emulsion.
	 * <!-- end-model-doc -->
	 * @see #POSITIVE_FILM_VALUE
	 * @generated
	 * @ordered
	 */
	POSITIVE_FILM(1, "POSITIVE_FILM", "positive film"),

	/**
	 * The '<em><b>PAPER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * For proofs and beds.
	 * <!-- end-model-doc -->
	 * @see #PAPER_VALUE
	 * @generated
	 * @ordered
	 */
	PAPER(2, "PAPER", "paper");

	/**
	 * The '<em><b>FUSED FILM</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Heat-transfer stencil film: toner is fused to the mesh.
	 * <!-- end-model-doc -->
	 * @see #FUSED_FILM
	 * @model literal="fused film"
	 * @generated
	 * @ordered
	 */
	public static final int FUSED_FILM_VALUE = 0;

	/**
	 * The '<em><b>POSITIVE FILM</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Clear film that shades an emulsion.
	 * <!-- end-model-doc -->
	 * @see #POSITIVE_FILM
	 * @model literal="positive film"
	 * @generated
	 * @ordered
	 */
	public static final int POSITIVE_FILM_VALUE = 1;

	/**
	 * The '<em><b>PAPER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * For proofs and beds.
	 * <!-- end-model-doc -->
	 * @see #PAPER
	 * @model literal="paper"
	 * @generated
	 * @ordered
	 */
	public static final int PAPER_VALUE = 2;

	/**
	 * An array of all the '<em><b>Sheet Material</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final SheetMaterial[] VALUES_ARRAY =
		new SheetMaterial[] {
			FUSED_FILM,
			POSITIVE_FILM,
			PAPER,
		};

	/**
	 * A public read-only list of all the '<em><b>Sheet Material</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<SheetMaterial> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Sheet Material</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static SheetMaterial get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			SheetMaterial result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Sheet Material</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static SheetMaterial getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			SheetMaterial result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Sheet Material</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static SheetMaterial get(int value) {
		switch (value) {
			case FUSED_FILM_VALUE: return FUSED_FILM;
			case POSITIVE_FILM_VALUE: return POSITIVE_FILM;
			case PAPER_VALUE: return PAPER;
		}
		return null;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final int value;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String name;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String literal;

	/**
	 * Only this class can construct instances.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private SheetMaterial(int value, String name, String literal) {
		this.value = value;
		this.name = name;
		this.literal = literal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getValue() {
	  return value;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName() {
	  return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLiteral() {
	  return literal;
	}

	/**
	 * Returns the literal value of the enumerator, which is its string representation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		return literal;
	}
	
} //SheetMaterial
