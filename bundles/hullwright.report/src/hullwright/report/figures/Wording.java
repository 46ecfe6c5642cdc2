/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report.figures;

import hullwright.analysis.power.Conditions;
import hullwright.analysis.wiring.BackboneSide;
import hullwright.network.power.PowerState;
import hullwright.quantity.Current;
import hullwright.quantity.Duration;
import hullwright.quantity.Length;
import hullwright.quantity.Resistance;
import hullwright.quantity.Voltage;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Figures and names as a person at a terminal reads them: voltages and currents to a hundredth, names without what all of them
 * begin with.
 */
final class Wording {

	/** Of a long list of names this many are told. */
	private static final int SOME = 5;

	private final String prefix;

	/** The wording for one boat, whose names begin with that of its series. */
	Wording(String series) {
		prefix = series + ".";
	}

	static String volts(Voltage voltage) {
		return number(voltage.volts(), 2) + " V";
	}

	static String volts(Optional<Voltage> voltage) {
		return voltage.map(Wording::volts).orElse("-");
	}

	/** A current to three digits, to a hundredth at best. */
	static String amperes(Current current) {
		double size = Math.abs(current.amperes());
		return number(current.amperes(), size < 9.995 ? 2 : size < 99.95 ? 1 : 0) + " A";
	}

	static String amperes(Optional<Current> current) {
		return current.map(Wording::amperes).orElse("-");
	}

	/** A small current to a tenth of a milliampere, without what is zero. */
	static String milliamperes(Current current) {
		return number(current.amperes() * 1000, 1).replaceFirst("\\.0$", "") + " mA";
	}

	/** A resistance to three digits, to a tenth of an ohm at best. */
	static String ohms(Resistance resistance) {
		double ohms = resistance.ohms();
		return ohms < 99.95 ? number(ohms, 1) + " ohm" : ohms < 999.5 ? number(ohms, 0) + " ohm" : number(ohms / 1000, ohms < 99_950 ? 1 : 0) + " kohm";
	}

	/** From one resistance to another, the unit told once where it is the same. */
	static String ohms(Resistance least, Resistance most) {
		String from = ohms(least);
		String to = ohms(most);
		String unit = to.substring(to.indexOf(' '));
		return from.equals(to) ? to : (from.endsWith(unit) ? from.substring(0, from.length() - unit.length()) : from) + " to " + to;
	}

	/** A length to a centimetre, without what is zero: 6.01 m is no 6 m. */
	static String metres(Length length) {
		return number(length.metres(), 2).replaceFirst("\\.?0+$", "") + " m";
	}

	/** A limit of length, rounded down: from 10 m on to a metre. */
	static String limit(Length length) {
		double steps = length.metres() < 10 ? 100 : 1;
		// what is a hundredth short of a whole number by the arithmetic of computers only stays whole
		return metres(new Length(Math.floor(length.metres() * steps + 1e-6) / steps));
	}

	/** A time: milliseconds, seconds or minutes, as people would say it. */
	static String time(Duration duration) {
		double seconds = duration.seconds();
		if (seconds < 0.9995) {
			return number(seconds * 1000, 0) + " ms";
		}
		if (seconds < 9.95) {
			return number(seconds, 1).replaceFirst("\\.0$", "") + " s";
		}
		return seconds < 119.5 ? number(seconds, 0) + " s" : number(seconds / 60, 0) + " min";
	}

	static String perCent(double share) {
		return number(share * 100, 0) + " %";
	}

	/** A number with this many decimals, without a sign on a zero. */
	static String number(double value, int decimals) {
		String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
		return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
	}

	/** A qualified name without that of the series. */
	String name(String qualified) {
		return qualified.startsWith(prefix) ? qualified.substring(prefix.length()) : qualified;
	}

	/** A qualified name without that of the series and of its network. */
	String name(String qualified, String network) {
		return qualified.startsWith(network + ".") ? qualified.substring(network.length() + 1) : name(qualified);
	}

	/** Which of the two fuses of a tap is meant; nothing for others. */
	static String side(Optional<BackboneSide> side) {
		return side.map(each -> each == BackboneSide.TOWARDS_START ? " towards start" : " towards end").orElse("");
	}

	/** Names, the first few of many. */
	String some(List<String> qualified, String network) {
		return some(qualified.stream().map(each -> name(each, network)).toList(), ", ", "");
	}

	/** Names with those of devices, the first few of many. */
	static String someOfDevices(List<String> told) {
		return some(told, "; ", " devices");
	}

	private static String some(List<String> told, String between, String what) {
		return told.size() <= SOME + 1 ? String.join(between, told)
				: String.join(between, told.subList(0, SOME)) + " and " + (told.size() - SOME) + " more" + what;
	}

	static String state(Optional<PowerState> state) {
		return state.map(each -> each.title().isEmpty() ? each.name().substring(each.name().lastIndexOf('.') + 1) : each.title().toLowerCase(Locale.ROOT))
				.orElse("everything on");
	}

	static String conditions(Conditions conditions) {
		String banks = switch (conditions.banks()) {
		case LOWEST -> "lowest bank";
		case NOMINAL -> "nominal voltage";
		case HIGHEST -> "highest bank";
		};
		String loads = switch (conditions.loads()) {
		case NOMINAL -> "usual loads";
		case GUARANTEED -> "guaranteed loads";
		case STARTING -> "all devices starting at once";
		};
		return banks + ", " + loads + ", wire at " + conditions.conductors();
	}
}
