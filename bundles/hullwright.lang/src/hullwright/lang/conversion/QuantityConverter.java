/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.conversion;

import hullwright.quantity.Dimension;
import hullwright.quantity.Quantity;
import hullwright.quantity.QuantityFormatException;
import hullwright.quantity.QuantityText;
import java.util.Optional;
import org.eclipse.xtext.conversion.IValueConverter;
import org.eclipse.xtext.conversion.ValueConverterException;
import org.eclipse.xtext.nodemodel.INode;

/**
 * Reads a quantity and complains in the terms of its kind: a length where a voltage stands, a number without a unit.
 */
final class QuantityConverter implements IValueConverter<Object> {

	private final Optional<Dimension> expected;

	private QuantityConverter(Optional<Dimension> expected) {
		this.expected = expected;
	}

	static QuantityConverter of(Dimension expected) {
		return new QuantityConverter(Optional.of(expected));
	}

	static QuantityConverter ofAnyKind() {
		return new QuantityConverter(Optional.empty());
	}

	@Override
	public Object toValue(String text, INode node) throws ValueConverterException {
		if (text == null) {
			// the parser's recovery found nothing to read, and says so itself
			return null;
		}
		try {
			return expected.isPresent() ? QuantityText.parse(text, expected.get()) : QuantityText.parse(text);
		} catch (QuantityFormatException e) {
			throw new ValueConverterException(e.getMessage(), node, e);
		}
	}

	@Override
	public String toString(Object value) throws ValueConverterException {
		return QuantityText.format((Quantity) value);
	}
}
