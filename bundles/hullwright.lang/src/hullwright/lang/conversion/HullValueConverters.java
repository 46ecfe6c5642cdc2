/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.conversion;

import com.google.inject.Inject;
import com.google.inject.Singleton;
import hullwright.quantity.Dimension;
import java.time.LocalDate;

import org.eclipse.xtext.conversion.IValueConverter;
import org.eclipse.xtext.conversion.ValueConverter;
import org.eclipse.xtext.conversion.impl.AbstractDeclarativeValueConverterService;
import org.eclipse.xtext.conversion.impl.STRINGValueConverter;

/**
 * Turns the text of terminals and data-type rules into values: one method for each rule of the grammar.
 */
@Singleton
public class HullValueConverters extends AbstractDeclarativeValueConverterService {

	@Inject
	private STRINGValueConverter string;

	@ValueConverter(rule = "INT")
	public IValueConverter<Integer> whole() {
		return new WholeNumberConverter();
	}

	@ValueConverter(rule = "STRING")
	public IValueConverter<String> string() {
		return string;
	}

	@ValueConverter(rule = "Length")
	public IValueConverter<Object> length() {
		return QuantityConverter.of(Dimension.LENGTH);
	}

	@ValueConverter(rule = "Voltage")
	public IValueConverter<Object> voltage() {
		return QuantityConverter.of(Dimension.VOLTAGE);
	}

	@ValueConverter(rule = "Current")
	public IValueConverter<Object> current() {
		return QuantityConverter.of(Dimension.CURRENT);
	}

	@ValueConverter(rule = "Resistance")
	public IValueConverter<Object> resistance() {
		return QuantityConverter.of(Dimension.RESISTANCE);
	}

	@ValueConverter(rule = "ResistancePerLength")
	public IValueConverter<Object> resistancePerLength() {
		return QuantityConverter.of(Dimension.RESISTANCE_PER_LENGTH);
	}

	@ValueConverter(rule = "DelayPerLength")
	public IValueConverter<Object> delayPerLength() {
		return QuantityConverter.of(Dimension.DELAY_PER_LENGTH);
	}

	@ValueConverter(rule = "ConductorSize")
	public IValueConverter<Object> conductorSize() {
		return QuantityConverter.of(Dimension.CONDUCTOR_SIZE);
	}

	@ValueConverter(rule = "Duration")
	public IValueConverter<Object> duration() {
		return QuantityConverter.of(Dimension.DURATION);
	}

	@ValueConverter(rule = "BitRate")
	public IValueConverter<Object> bitRate() {
		return QuantityConverter.of(Dimension.BIT_RATE);
	}

	@ValueConverter(rule = "LoadAmount")
	public IValueConverter<Object> loadAmount() {
		return QuantityConverter.ofOneOf("load", Dimension.CURRENT, Dimension.POWER, Dimension.RESISTANCE);
	}

	@ValueConverter(rule = "Efficiency")
	public IValueConverter<Object> efficiency() {
		return QuantityConverter.ofShare("efficiency");
	}

	@ValueConverter(rule = "Date")
	public IValueConverter<LocalDate> date() {
		return new DateConverter();
	}

	@ValueConverter(rule = "Decimal")
	public IValueConverter<Double> decimal() {
		return new DecimalConverter();
	}

	@ValueConverter(rule = "ParameterValue")
	public IValueConverter<Object> parameterValue() {
		return new ParameterValueConverter();
	}

	@ValueConverter(rule = "AnyQuantity")
	public IValueConverter<Object> anyQuantity() {
		return QuantityConverter.ofAnyKind();
	}
}
