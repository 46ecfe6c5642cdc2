/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.conversion;

import hullwright.quantity.Dimension;
import hullwright.quantity.Quantity;
import hullwright.quantity.QuantityFormatException;
import hullwright.quantity.QuantityText;
import java.util.List;
import org.eclipse.xtext.conversion.IValueConverter;
import org.eclipse.xtext.conversion.ValueConverterException;
import org.eclipse.xtext.nodemodel.INode;

/**
 * Reads a quantity and complains in the terms of its kind: a length where a voltage stands, a number without a unit.
 */
final class QuantityConverter implements IValueConverter<Object> {

	private interface Reading {
		Quantity read(String text) throws QuantityFormatException;
	}

	private final Reading reading;

	private QuantityConverter(Reading reading) {
		this.reading = reading;
	}

	static QuantityConverter of(Dimension expected) {
		return new QuantityConverter(text -> QuantityText.parse(text, expected));
	}

	/** Reads a quantity of one of several kinds, which people call by one word. */
	static QuantityConverter ofOneOf(String what, Dimension... allowed) {
		return new QuantityConverter(text -> QuantityText.parse(text, what, List.of(allowed)));
	}

	/** Reads a percentage of a whole, which people call by one word. */
	static QuantityConverter ofShare(String what) {
		return new QuantityConverter(text -> QuantityText.parseShare(text, what));
	}

	static QuantityConverter ofAnyKind() {
		return new QuantityConverter(QuantityText::parse);
	}

	@Override
	public Object toValue(String text, INode node) throws ValueConverterException {
		if (text == null) {
			// the parser's recovery found nothing to read, and says so itself
			return null;
		}
		try {
			return reading.read(text);
		} catch (QuantityFormatException e) {
			throw new ValueConverterException(e.getMessage(), node, e);
		}
	}

	@Override
	public String toString(Object value) throws ValueConverterException {
		return QuantityText.format((Quantity) value);
	}
}
