/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report.figures;

import hullwright.analysis.serial.SerialLineFigures;
import hullwright.analysis.serial.SerialProblem;
import hullwright.network.DevicePortRef;
import hullwright.quantity.BitRate;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What is wrong with a serial line, in words.
 */
final class SerialProblemText {

	private final Wording wording;

	SerialProblemText(Wording wording) {
		this.wording = wording;
	}

	String word(SerialLineFigures line, SerialProblem problem) {
		return "serial line " + wording.name(line.line().name()) + ": " + word(problem);
	}

	private String word(SerialProblem problem) {
		if (problem instanceof SerialProblem.NoTalker) {
			return "nobody on board talks on it";
		} else if (problem instanceof SerialProblem.NoListener) {
			return "nobody on board listens to it";
		} else if (problem instanceof SerialProblem.SeveralTalkers several) {
			return several.talkers().stream().map(this::port).collect(Collectors.joining(" and "))
					+ " all talk on it: one line has one talker, others need lines of their own or a multiplexer";
		} else if (problem instanceof SerialProblem.InputShared shared) {
			return port(shared.listener()) + " already listens to " + wording.some(shared.otherLines(), "") + ": an input takes one talker";
		} else if (problem instanceof SerialProblem.NoSerialPort none) {
			return port(none.end()) + " is no port for serial lines";
		} else if (problem instanceof SerialProblem.CannotTalk end) {
			return port(end.end()) + " is to talk, and its catalog has it as no talker";
		} else if (problem instanceof SerialProblem.CannotListen end) {
			return port(end.end()) + " is to listen, and its catalog has it as no listener";
		} else if (problem instanceof SerialProblem.HearsItself self) {
			return wording.name(self.device()) + " would hear what it tells itself";
		}
		return wordOfRateOrLoad(problem);
	}

	private String wordOfRateOrLoad(SerialProblem problem) {
		if (problem instanceof SerialProblem.RateImpossible rate) {
			return "no line signals at " + rate(rate.rate());
		} else if (problem instanceof SerialProblem.RateNotPossible end) {
			return port(end.end()) + " cannot signal at " + rate(end.rate()) + ", only at " + rates(end.possible());
		} else if (problem instanceof SerialProblem.PortAtTwoRates port) {
			return port(port.talker()) + " talks at another rate on " + wording.some(port.otherLines(), "") + ": a port has one";
		} else if (problem instanceof SerialProblem.NoCommonRate none) {
			return "no rate suits all ends: "
					+ none.ends().stream().map(each -> port(each.end()) + " has " + rates(each.rates())).collect(Collectors.joining(", "));
		} else if (problem instanceof SerialProblem.RateOpen open) {
			return open.candidates().isEmpty() ? "neither the line nor its ends say how fast it signals"
					: "its ends can signal at " + rates(open.candidates()) + ", and the text does not say at which";
		} else if (problem instanceof SerialProblem.NeverDrains full) {
			return "what is told regularly asks for " + Wording.perCent(full.asked().fraction()) + " of it, so what waits never drains: there is no bound";
		}
		return "with what events tell at most it is asked for " + Wording.perCent(((SerialProblem.EventsMayFlood) problem).asked().fraction())
				+ " of what it carries: there is no bound";
	}

	private String port(DevicePortRef port) {
		return wording.name(port.device() + "." + port.port());
	}

	private static String rates(List<BitRate> rates) {
		return rates.stream().map(SerialProblemText::rate).collect(Collectors.joining(" or "));
	}

	/** A rate as the trade writes it: 38400 bit/s. */
	static String rate(BitRate rate) {
		return Wording.number(rate.bitsPerSecond(), 0) + " bit/s";
	}
}
