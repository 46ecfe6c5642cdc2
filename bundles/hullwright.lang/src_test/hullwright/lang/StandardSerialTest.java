/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.quantity.BitRate;
import hullwright.quantity.Current;
import hullwright.quantity.Duration;
import hullwright.spec.DeviceType;
import hullwright.spec.LineLevel;
import hullwright.spec.LinePort;
import hullwright.spec.MessageUse;
import hullwright.spec.Pgn;
import hullwright.spec.Sending;
import hullwright.spec.Sentence;
import hullwright.spec.Turning;
import hullwright.spec.WirelessPort;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds serial units and gateways of the standard catalog against what is published of IEC 61162-1 and -2. */
class StandardSerialTest {

	/** IEC 61162-1 and IEC 61162-2, as the digital-interface appendices of two public installation manuals state them. */
	private static final Set<BitRate> RATES = Set.of(new BitRate(4800), new BitRate(38400));

	/** Of a line's characters a second: common practice leaves a fifth free. */
	private static final double FULL = 0.8;

	/** One start bit, eight data bits, one stop bit (the same manuals). */
	private static final int BITS_A_CHARACTER = 10;

	/**
	 * Which sentence and which PGN carry the same thing: operator's manual of a repeater display, pp. 9-10 (DPT, DBT, MWV,
	 * VWR, HDG, HDM, HDT, RSA, VTG, RMC, VHW), a gateway's manual, appendix A (VBW, VLW, ZDA), and common practice (the rest).
	 */
	private static final Map<String, Set<String>> CARRY_THE_SAME = Map.ofEntries(
			Map.entry("DPT", Set.of("128267")),
			Map.entry("DBT", Set.of("128267")),
			Map.entry("VHW", Set.of("128259", "127250", "130577")),
			Map.entry("VBW", Set.of("128259")),
			Map.entry("VLW", Set.of("128275")),
			Map.entry("MTW", Set.of("130310", "130311", "130312", "130316")),
			Map.entry("MWV", Set.of("130306")),
			Map.entry("VWR", Set.of("130306")),
			Map.entry("HDG", Set.of("127250", "127258")),
			Map.entry("HDM", Set.of("127250")),
			Map.entry("HDT", Set.of("127250")),
			Map.entry("ROT", Set.of("127251")),
			Map.entry("RSA", Set.of("127245")),
			Map.entry("GLL", Set.of("129025")),
			Map.entry("GGA", Set.of("129029")),
			Map.entry("VTG", Set.of("129026")),
			Map.entry("RMC", Set.of("129025", "129026", "129029", "126992", "129033", "127258")),
			Map.entry("ZDA", Set.of("126992", "129033")),
			Map.entry("APB", Set.of("129283", "129284", "129285")),
			Map.entry("RMB", Set.of("129283", "129284", "129285")),
			Map.entry("VDM", Set.of("129038", "129039", "129040", "129041", "129793", "129794", "129798", "129801", "129802", "129809", "129810")));

	static List<DeviceType> units() {
		return StandardParts.serialUnits();
	}

	static List<DeviceType> gateways() {
		return StandardParts.all(DeviceType.class).stream().filter(device -> !device.getTurns().isEmpty()).toList();
	}

	static List<LinePort> lines(DeviceType unit) {
		return unit.getPorts().stream().filter(LinePort.class::isInstance).map(LinePort.class::cast).toList();
	}

	@ParameterizedTest
	@MethodSource("units")
	void linesTalkOrListenAtARateOfTheStandard(DeviceType unit) {
		for (LinePort line : lines(unit)) {
			String where = unit.getName() + "." + line.getName();
			assertTrue(line.isTalker() || line.isListener(), where);
			assertFalse(line.getRates().isEmpty(), where);
			assertTrue(RATES.containsAll(line.getRates()), where);
			assertTrue(line.isTalker() || line.getDrives() == 0 && line.getDrive() == null, where);
			assertTrue(!line.isTalker() || line.getLevel() != LineLevel.UNSTATED, where);
		}
	}

	/** Radio manuals, section on the digital interface: a listener draws at most 2 mA; it is isolated, but on RS-232. */
	@ParameterizedTest
	@MethodSource("units")
	void listenersDrawNoMoreThanTheStandardAllows(DeviceType unit) {
		for (LinePort line : lines(unit)) {
			String where = unit.getName() + "." + line.getName();
			if (line.isListener() && line.getLevel() != LineLevel.RS232) {
				assertTrue(line.getDraws().compareTo(new Current(0.002)) <= 0, where);
				assertTrue(line.isIsolated() || line.getLevel() == LineLevel.DIFFERENTIAL, where);
			}
		}
	}

	/** Installation manuals: up to three or four listeners on a talker, one or two on a single-ended one. */
	@ParameterizedTest
	@MethodSource("units")
	void talkersDriveAsManyListenersAsManualsSay(DeviceType unit) {
		for (LinePort line : lines(unit)) {
			if (line.isTalker() && line.getLevel() != LineLevel.RS232) {
				int listeners = line.getDrive() != null ? (int) Math.round(line.getDrive().amperes() / 0.002) : line.getDrives();
				int most = line.getDrive() != null ? 25 : line.getLevel() == LineLevel.SINGLE_ENDED ? 2 : 4;
				assertTrue(listeners >= 1 && listeners <= most, unit.getName() + "." + line.getName() + ": " + listeners);
			}
		}
	}

	/** A unit alone on its line, at the best rate that it has, does not fill it. */
	@ParameterizedTest
	@MethodSource("units")
	void noTalkerFillsItsLine(DeviceType unit) {
		for (LinePort line : lines(unit)) {
			double charactersASecond = 0;
			for (Sending sent : unit.getSends()) {
				if (sent.getPort() == line && (sent.getEvery() != null || sent.getApart() != null)) {
					charactersASecond += sent.getMessage().getLength() / seconds(sent.getEvery() != null ? sent.getEvery() : sent.getApart());
				}
			}
			for (Turning turned : unit.getTurns()) {
				if (turned.getPort() == line && turned.getAtMostEvery() != null) {
					charactersASecond += turned.getTo().stream().mapToInt(use -> use.getMessage().getLength()).sum() / seconds(turned.getAtMostEvery());
				}
			}
			double most = line.getRates().stream().mapToDouble(BitRate::bitsPerSecond).max().orElseThrow() / BITS_A_CHARACTER;
			assertTrue(charactersASecond <= FULL * most,
					unit.getName() + "." + line.getName() + ": " + charactersASecond + " of " + most + " characters a second");
		}
	}

	private static double seconds(Duration duration) {
		return duration.seconds();
	}

	/** A sentence goes over a line, a PGN over the bus; who has both says which sentence goes where. */
	@ParameterizedTest
	@MethodSource("units")
	void sentencesGoOverALineOfTheUnit(DeviceType unit) {
		for (Sending sent : unit.getSends()) {
			if (sent.getMessage() instanceof Sentence) {
				assertTrue(lines(unit).stream().anyMatch(line -> line == sent.getPort() && line.isTalker()),
						unit.getName() + " sends " + sent.getMessage().getName());
			}
		}
	}

	@ParameterizedTest
	@MethodSource("gateways")
	void gatewaysTurnOnlyWhatCarriesTheSame(DeviceType gateway) {
		for (Turning turned : gateway.getTurns()) {
			boolean toBus = turned.getTo().get(0).getMessage() instanceof Pgn;
			List<MessageUse> sentences = toBus ? turned.getFrom() : turned.getTo();
			List<MessageUse> pgns = toBus ? turned.getTo() : turned.getFrom();
			for (MessageUse sentence : sentences) {
				assertTrue(CARRY_THE_SAME.getOrDefault(sentence.getMessage().getName(), Set.of()).containsAll(names(pgns)),
						gateway.getName() + ": " + sentence.getMessage().getName() + " and " + names(pgns));
			}
			// what is polled from the bus goes out at a pace of its own, since a line is slower than the bus
			assertTrue(toBus || turned.getPort() instanceof LinePort, gateway.getName() + " to " + names(sentences));
		}
	}

	/** Operator's manual of a repeater display: the reference decides between HDG or HDM and HDT. */
	@Test
	void headingKeepsItsReference() {
		Set<String> pairs = new TreeSet<>();
		for (DeviceType gateway : gateways()) {
			for (Turning turned : gateway.getTurns()) {
				for (MessageUse from : turned.getFrom()) {
					for (MessageUse to : turned.getTo()) {
						MessageUse heading = from.getMessage().getName().equals("127250") ? from : to;
						String sentence = (heading == from ? to : from).getMessage().getName();
						if (heading.getMessage().getName().equals("127250") && sentence.startsWith("HD")) {
							pairs.add(sentence + " " + heading.getValue().getName());
						}
					}
				}
			}
		}
		assertEquals(Set.of("HDG magnetic", "HDM magnetic", "HDT true"), pairs);
	}

	@Test
	void theKindsOfGatewaysThatTheTradeUsesAreThere() {
		Set<String> names = StandardParts.all(DeviceType.class).stream().map(DeviceType::getName).collect(Collectors.toSet());
		assertTrue(names.containsAll(Set.of("serialGateway", "multiplexer", "wirelessGateway", "busBridge", "engineBusGateway")));
		DeviceType multiplexer = units().stream().filter(unit -> unit.getName().equals("multiplexer")).findFirst().orElseThrow();
		// a multiplexer's manual, p. 2: about 2 s of data are kept for an input
		assertTrue(lines(multiplexer).stream().filter(line -> line.isListener() && !line.isTalker()).allMatch(line -> line.getBuffer() != null));
	}

	/** Common practice: a wireless hop serves few clients and adds delay. */
	@Test
	void wirelessGatewaysSayHowManyTheyServeAndHowLateTheyAre() {
		List<WirelessPort> serving = StandardParts.all(DeviceType.class).stream().flatMap(device -> device.getPorts().stream())
				.filter(WirelessPort.class::isInstance).map(WirelessPort.class::cast).filter(port -> port.getClients() > 0).toList();
		assertTrue(serving.size() >= 2);
		serving.forEach(port -> assertNotNull(port.getDelay()));
	}

	private static List<String> names(List<MessageUse> uses) {
		return uses.stream().map(use -> use.getMessage().getName()).toList();
	}
}
