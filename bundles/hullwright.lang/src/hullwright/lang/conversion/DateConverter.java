/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.conversion;

import java.time.DateTimeException;
import java.time.LocalDate;

import org.eclipse.xtext.conversion.IValueConverter;
import org.eclipse.xtext.conversion.ValueConverterException;
import org.eclipse.xtext.nodemodel.INode;

/**
 * Reads a day as ISO 8601 writes it: year, month, day.
 */
final class DateConverter implements IValueConverter<LocalDate> {

	@Override
	public LocalDate toValue(String text, INode node) throws ValueConverterException {
		if (text == null) {
			return null;
		}
		try {
			return LocalDate.parse(text.replaceAll("\\s", ""));
		} catch (DateTimeException e) {
			throw new ValueConverterException("'" + text.strip() + "' is no day of the calendar; write one as '2027-03-01'", node, e);
		}
	}

	@Override
	public String toString(LocalDate value) throws ValueConverterException {
		return value.toString();
	}
}
