/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.quantity.AmericanWireGauge;
import hullwright.quantity.Current;
import hullwright.quantity.Length;
import hullwright.quantity.Resistance;
import hullwright.quantity.Voltage;
import hullwright.spec.AdapterType;
import hullwright.spec.BackbonePartType;
import hullwright.spec.CableType;
import hullwright.spec.Catalog;
import hullwright.spec.Conductor;
import hullwright.spec.DevicePort;
import hullwright.spec.DeviceType;
import hullwright.spec.End;
import hullwright.spec.Family;
import hullwright.spec.Gender;
import hullwright.spec.Named;
import hullwright.spec.PartType;
import hullwright.spec.PortGroup;
import hullwright.spec.TeeType;
import hullwright.spec.TerminatorType;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.api.Test;

/**
 * Holds the standard catalog against what the trade has published. The figures of the devices are invented; those of
 * cable and connectors are not.
 */
class StandardCatalogTest {

	/**
	 * Resistance of solid copper at 20 degrees Celsius in ohm per 1000 ft: copper wire table of the NBS, as reprinted in
	 * public wire gauge tables.
	 */
	private static final Map<Integer, Double> OHMS_PER_1000_FEET = Map.of(15, 3.184, 16, 4.016, 18, 6.385, 20, 10.15, 22, 16.14, 24, 25.67);

	private static final Catalog STANDARD = (Catalog) HullTexts
			.spec(new HullTexts().read(HullTexts.shipped().filter(file -> file.endsWith("standard/parts.hull")).findFirst().orElseThrow()))
			.getDeclarations().get(0);

	static <T extends PartType> List<T> all(Class<T> type) {
		return STANDARD.getParts().stream().filter(type::isInstance).map(type::cast).toList();
	}

	static List<CableType> cables() {
		return all(CableType.class);
	}

	static List<TerminatorType> terminators() {
		return all(TerminatorType.class);
	}

	static List<BackbonePartType> backboneParts() {
		return all(BackbonePartType.class);
	}

	static List<TeeType> tees() {
		return all(TeeType.class);
	}

	static List<DeviceType> devices() {
		return all(DeviceType.class);
	}

	@Test
	void everyPartAndFamilySaysWhereItsFiguresComeFrom() {
		Set<String> silent = Stream.concat(
				STANDARD.getParts().stream().filter(part -> part.getSource() == null),
				STANDARD.getFamilies().stream().filter(family -> family.getSource() == null))
				.map(Named::getName)
				.collect(Collectors.toSet());
		assertEquals(Set.of(), silent);
	}

	@Test
	void offersAboutThirtyDevicesOfTheTradeOrMore() {
		assertTrue(devices().size() >= 30, devices().size() + " devices");
	}

	/** M12 connector rating guide (4 A, 5 mohm); DeviceNet installation manual, 2000, p. 12 (8 A). */
	@Test
	void contactsCarryWhatTheRatingGuidesAllow() {
		assertEquals(new Current(4), family("micro").getRated());
		assertEquals(new Current(8), family("mini").getRated());
		assertEquals(new Resistance(0.005), family("micro").getContact());
	}

	/** NMEA 2000 installer slides of 2012 as summarised in public, Nov 2017. */
	@Test
	void backbonesReachAsFarAsTheGuidesSay() {
		assertEquals(new Length(100), cable("light").getMaxBackbone());
		assertEquals(new Length(200), cable("mid").getMaxBackbone());
		assertEquals(new Length(200), cable("heavy").getMaxBackbone());
	}

	/** Stranded and tinned cores lie above solid copper of the same gauge, never below it, and never far above. */
	@ParameterizedTest
	@MethodSource("cables")
	void declaredResistanceIsThatOfItsGaugeOrALittleMore(CableType cable) {
		for (Conductor conductor : List.of(cable.getPower(), cable.getSignal())) {
			int gauge = ((AmericanWireGauge) conductor.getSize()).number();
			double copper = OHMS_PER_1000_FEET.get(gauge) / 304.8;
			double declared = conductor.getResistance().ohmsPerMetre();
			assertTrue(declared > 0.999 * copper && declared < 1.12 * copper,
					cable.getName() + ": " + declared + " ohm/m against " + copper + " of copper");
		}
	}

	/** Public network fundamentals pages of a display maker: 120 ohm, one at each end. */
	@ParameterizedTest
	@MethodSource("terminators")
	void terminatorsAre120Ohm(TerminatorType terminator) {
		assertEquals(new Resistance(120), terminator.getResistance());
		assertEquals(terminator.isInLine() ? 2 : 1, terminator.getEnds().size());
	}

	/** Public NMEA 2000 cabling guide, section 1: one end with pins, one with sockets, so that direction is preserved. */
	@ParameterizedTest
	@MethodSource("cables")
	void cableHasPinsAtOneEndAndSocketsAtTheOther(CableType cable) {
		assertPinsThenSockets(cable.getName(), cable.getEnds());
	}

	/** Common practice: trunk pins at one side, trunk sockets at the other. */
	@ParameterizedTest
	@MethodSource("backboneParts")
	void backbonePartsKeepTheDirectionOfTheCable(BackbonePartType part) {
		assertPinsThenSockets(part.getName(), part.getEnds());
	}

	@Test
	void adaptersStartWithPinsAtTheTee() {
		List<AdapterType> adapters = all(AdapterType.class);
		assertTrue(adapters.size() >= 2);
		adapters.forEach(adapter -> assertPinsThenSockets(adapter.getName(), adapter.getEnds()));
	}

	/** Common practice: drop ports have sockets, devices have pins. */
	@ParameterizedTest
	@MethodSource("tees")
	void dropPortsHaveSockets(TeeType tee) {
		assertEquals(Set.of(Gender.FEMALE), tee.getPorts().stream().map(PortGroup::getEnd).map(End::getGender).collect(Collectors.toSet()));
	}

	@ParameterizedTest
	@MethodSource("devices")
	void devicesHavePinsAndStateTheirLoadAndSupply(DeviceType device) {
		End end = device.getLead() != null ? device.getLead().getEnd() : ((DevicePort) device.getPorts().get(0)).getEnd();
		assertEquals(Gender.MALE, end.getGender());
		// public guides: 9 V to 16 V at every device
		assertEquals(new Voltage(9), device.getLowest());
		assertEquals(new Voltage(16), device.getHighest());
		assertTrue(((Current) device.getLoad().getNominal()).loadEquivalencyNumber() >= 1);
	}

	/** A public article of a gateway maker: above 1 A (20 LEN) a device takes an isolated supply of its own. */
	@ParameterizedTest
	@MethodSource("devices")
	void noDeviceTakesMoreThanOneAmpereFromTheNetwork(DeviceType device) {
		assertTrue(((Current) device.getLoad().getNominal()).compareTo(new Current(1)) <= 0);
		assertTrue(!device.isOwnSupply() || device.isIsolated());
	}

	private static void assertPinsThenSockets(String part, List<End> ends) {
		assertEquals(List.of(Gender.MALE, Gender.FEMALE), ends.stream().map(End::getGender).toList(), part);
	}

	private static CableType cable(String name) {
		return cables().stream().filter(cable -> cable.getName().equals(name)).findFirst().orElseThrow();
	}

	private static Family family(String name) {
		return STANDARD.getFamilies().stream().filter(family -> family.getName().equals(name)).findFirst().orElseThrow();
	}
}
