/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.quantity.AmericanWireGauge;
import hullwright.quantity.ConductorSize;
import hullwright.quantity.CrossSection;
import hullwright.quantity.Current;
import hullwright.quantity.Duration;
import hullwright.quantity.Length;
import hullwright.quantity.Resistance;
import hullwright.spec.AdapterType;
import hullwright.spec.BackbonePartType;
import hullwright.spec.CableType;
import hullwright.spec.CapType;
import hullwright.spec.Conductor;
import hullwright.spec.CordType;
import hullwright.spec.DeviceType;
import hullwright.spec.End;
import hullwright.spec.Family;
import hullwright.spec.FeedSides;
import hullwright.spec.FeedThroughType;
import hullwright.spec.FuseOpening;
import hullwright.spec.FuseType;
import hullwright.spec.Gender;
import hullwright.spec.IsolatorType;
import hullwright.spec.Lead;
import hullwright.spec.PartType;
import hullwright.spec.PortGroup;
import hullwright.spec.TapType;
import hullwright.spec.TeeType;
import hullwright.spec.TerminatorType;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds cable, connectors and fuses of the standard catalog against what the trade has published. */
class StandardCablingTest {

	/**
	 * Resistance of solid copper at 20 degrees Celsius in ohm per 1000 ft: copper wire table of the NBS, as reprinted in
	 * public wire gauge tables.
	 */
	private static final Map<Integer, Double> OHMS_PER_1000_FEET = Map.of(14, 2.525, 15, 3.184, 16, 4.016, 18, 6.385, 20, 10.15, 22, 16.14,
			24, 25.67);

	/** IEC 60228, class 5, plain copper: the most at 20 degrees Celsius in ohm per km, as two public cable pages reprint it. */
	private static final Map<Double, Double> MOST_OHMS_PER_KILOMETRE = Map.of(0.5, 39.0, 0.75, 26.0, 1.0, 19.5, 1.5, 13.3, 2.5, 7.98);

	static List<CableType> cables() {
		return StandardParts.all(CableType.class);
	}

	static List<CableType> networkCables() {
		return cables().stream().filter(cable -> cable.getPower() != null).toList();
	}

	static List<TerminatorType> terminators() {
		return StandardParts.all(TerminatorType.class);
	}

	static List<BackbonePartType> backboneParts() {
		return StandardParts.all(BackbonePartType.class);
	}

	static List<TeeType> tees() {
		return StandardParts.all(TeeType.class);
	}

	static List<TapType> taps() {
		return StandardParts.all(TapType.class);
	}

	static List<AdapterType> adapters() {
		return StandardParts.all(AdapterType.class);
	}

	static List<CordType> cords() {
		return StandardParts.all(CordType.class);
	}

	static List<FuseType> fuses() {
		return StandardParts.all(FuseType.class);
	}

	static List<Family> families() {
		return StandardParts.PARTS.getFamilies();
	}

	/** M12 connector rating guide (4 A, 5 mohm); DeviceNet installation manual, 2000, p. 12 (8 A). */
	@Test
	void contactsCarryWhatTheRatingGuidesAllow() {
		assertEquals(new Current(4), StandardParts.family("micro").getRated());
		assertEquals(new Current(8), StandardParts.family("mini").getRated());
		assertEquals(new Resistance(0.005), StandardParts.family("micro").getContact());
	}

	/** NMEA 2000 installer slides of 2012 as summarised in public, Nov 2017; 60 m: a public leaflet of an old small network. */
	@Test
	void backbonesReachAsFarAsTheGuidesSay() {
		Map<String, Length> reach = networkCables().stream().filter(cable -> cable.getMaxBackbone() != null)
				.collect(Collectors.toMap(CableType::getName, CableType::getMaxBackbone));
		assertEquals(Map.of("light", new Length(100), "mid", new Length(200), "midMini", new Length(200), "heavy", new Length(200),
				"bayonetLight", new Length(60)), reach);
	}

	/** Stranded and tinned cores lie above solid copper of the same gauge, never below it, and never far above. */
	@ParameterizedTest
	@MethodSource("cables")
	void declaredResistanceIsThatOfItsSizeOrALittleMore(CableType cable) {
		List<Conductor> pairs = Stream.of(cable.getPower(), cable.getSignal()).filter(Objects::nonNull).toList();
		assertFalse(pairs.isEmpty());
		for (Conductor pair : pairs) {
			double declared = pair.getResistance().ohmsPerMetre();
			if (pair.getSize() instanceof AmericanWireGauge gauge) {
				double copper = OHMS_PER_1000_FEET.get(gauge.number()) / 304.8;
				assertTrue(declared > 0.999 * copper && declared < 1.12 * copper,
						cable.getName() + ": " + declared + " ohm/m against " + copper + " of copper");
			} else {
				assertEquals(MOST_OHMS_PER_KILOMETRE.get(((CrossSection) pair.getSize()).squareMillimetres()), declared * 1000, 1e-9, cable.getName());
			}
		}
	}

	/** DeviceNet operation manual, p. 46: 120 ohm within 10 %, as the terminators that end the pair. */
	@ParameterizedTest
	@MethodSource("networkCables")
	void cablesHaveTheImpedanceOfTheTerminators(CableType cable) {
		assertEquals(120, cable.getImpedance().ohms(), 12, cable.getName());
	}

	/** An adapter bears what its rating says: its power conductors are no thinner than those of a cable of that rating. */
	@ParameterizedTest
	@MethodSource("adapters")
	void adaptersHaveTheConductorsOfACable(AdapterType adapter) {
		assertTrue(networkCables().stream().anyMatch(cable -> samePair(cable.getPower(), adapter.getPower())
				&& samePair(cable.getSignal(), adapter.getSignal())
				&& (adapter.getRated() == null || adapter.getRated().compareTo(cable.getRated()) <= 0)), adapter.getName());
	}

	private static boolean samePair(Conductor one, Conductor other) {
		return one.getSize().equals(other.getSize()) && one.getResistance().equals(other.getResistance());
	}

	/** A lead is made of a cable with the connector that the lead ends in. */
	@Test
	void leadsAreMadeOfCable() {
		List<Lead> leads = StandardParts.all(DeviceType.class).stream().map(DeviceType::getLead).filter(Objects::nonNull).toList();
		assertFalse(leads.isEmpty());
		for (Lead lead : leads) {
			assertTrue(lead.getCable().getEnds().stream().anyMatch(end -> end.getFamily() == lead.getEnd().getFamily()
					&& end.getGender() == lead.getEnd().getGender()));
		}
	}

	/** From memory: small fuses drop about a tenth to a third of a volt at rated current, more would melt them sooner. */
	@Test
	void fusesDropTenthsOfAVolt() {
		List<FuseType> fuses = StandardParts.all(FuseType.class);
		assertFalse(fuses.isEmpty());
		fuses.forEach(fuse -> assertEquals(0.2, fuse.getDrop().volts(), 0.15, fuse.getName()));
	}

	/** A cable carries no more than its connectors, and a heavier pair no less than a lighter one of the same connectors. */
	@ParameterizedTest
	@MethodSource("networkCables")
	void cableIsRatedWithinItsConnectors(CableType cable) {
		assertNotNull(cable.getDelay());
		for (End end : cable.getEnds()) {
			assertTrue(cable.getRated().compareTo(end.getFamily().getRated()) <= 0, cable.getName());
		}
	}

	/** Stock is cut in lengths that a guide's longest drop (6 m: public NMEA 2000 cabling guide) or backbone can use. */
	@ParameterizedTest
	@MethodSource("cables")
	void stockLengthsRiseAndFitTheLongestRun(CableType cable) {
		List<Length> stock = cable.getStock();
		assertFalse(stock.isEmpty());
		assertEquals(stock.stream().sorted().distinct().toList(), stock, cable.getName());
		if (cable.getPower() != null) {
			Length longest = cable.getMaxBackbone() != null ? cable.getMaxBackbone() : new Length(6);
			assertTrue(stock.get(stock.size() - 1).compareTo(longest) <= 0, cable.getName());
		}
	}

	/** Public network fundamentals pages of a display maker: 120 ohm, one at each end. */
	@ParameterizedTest
	@MethodSource("terminators")
	void terminatorsAre120Ohm(TerminatorType terminator) {
		assertEquals(new Resistance(120), terminator.getResistance());
		assertEquals(terminator.isInLine() ? 2 : 1, terminator.getEnds().size());
	}

	/** The same pages, p. 7: an in-line terminator has pins to the backbone and sockets to the device, which has pins. */
	@Test
	void inLineTerminatorsReplaceTheOneWithPins() {
		List<TerminatorType> inLine = terminators().stream().filter(TerminatorType::isInLine).toList();
		assertEquals(Set.of("micro", "mini", "bayonet"),
				inLine.stream().map(each -> each.getEnds().get(0).getFamily().getName()).collect(Collectors.toSet()));
		inLine.forEach(each -> assertPinsThenSockets(each.getName(), each.getEnds()));
	}

	/** Public NMEA 2000 cabling guide, section 1: one end with pins, one with sockets, so that direction is preserved. */
	@ParameterizedTest
	@MethodSource("networkCables")
	void cableHasPinsAtOneEndAndSocketsAtTheOther(CableType cable) {
		assertPinsThenSockets(cable.getName(), cable.getEnds());
	}

	/** Common practice: trunk pins at one side, trunk sockets at the other. */
	@ParameterizedTest
	@MethodSource("backboneParts")
	void backbonePartsKeepTheDirectionOfTheCable(BackbonePartType part) {
		assertPinsThenSockets(part.getName(), part.getEnds());
	}

	/** Common practice: drop ports have sockets, devices have pins. */
	@ParameterizedTest
	@MethodSource("tees")
	void dropPortsHaveSocketsAndAreNumberedFromOne(TeeType tee) {
		assertEquals(Set.of(Gender.FEMALE), tee.getPorts().stream().map(PortGroup::getEnd).map(End::getGender).collect(Collectors.toSet()));
		int next = 1;
		for (PortGroup group : tee.getPorts()) {
			assertEquals(next, group.getFirst());
			next = Math.max(group.getFirst(), group.getLast()) + 1;
		}
	}

	@ParameterizedTest
	@MethodSource("adapters")
	void adaptersStartWithPinsAtTheTeeAndChangeTheFamily(AdapterType adapter) {
		assertPinsThenSockets(adapter.getName(), adapter.getEnds());
		Family from = adapter.getEnds().get(0).getFamily();
		Family to = adapter.getEnds().get(1).getFamily();
		assertTrue(from != to, adapter.getName());
		assertTrue(adapter.getLength().compareTo(Length.ZERO) > 0, adapter.getName());
		if (adapter.isCarriesPower()) {
			assertTrue(adapter.getRated().compareTo(from.getRated()) <= 0 && adapter.getRated().compareTo(to.getRated()) <= 0, adapter.getName());
		} else {
			assertNull(adapter.getRated(), adapter.getName());
		}
	}

	@Test
	void everyFamilyCanBeAdaptedToEveryOther() {
		Set<String> wanted = new TreeSet<>();
		for (Family from : families()) {
			families().stream().filter(to -> to != from).forEach(to -> wanted.add(from.getName() + " to " + to.getName()));
		}
		assertEquals(wanted, adapters().stream().filter(AdapterType::isCarriesPower)
				.map(adapter -> adapter.getEnds().get(0).getFamily().getName() + " to " + adapter.getEnds().get(1).getFamily().getName())
				.collect(Collectors.toCollection(TreeSet::new)));
	}

	@ParameterizedTest
	@MethodSource("families")
	void aNetworkOfAnyFamilyCanBeBuiltEndToEnd(Family family) {
		for (Class<? extends PartType> kind : List.of(CableType.class, TeeType.class, TapType.class, FeedThroughType.class)) {
			assertTrue(StandardParts.all(kind).stream().anyMatch(part -> StandardParts.ends(part).stream().allMatch(end -> end.getFamily() == family)
					&& !StandardParts.ends(part).isEmpty()), "no " + kind.getSimpleName() + " of " + family.getName());
		}
		assertTrue(cords().stream().anyMatch(cord -> cord.getEnds().get(0).getFamily() == family), "no cord of " + family.getName());
		for (Class<? extends PartType> kind : List.of(TerminatorType.class, CapType.class)) {
			assertEquals(Set.of(Gender.MALE, Gender.FEMALE), StandardParts.all(kind).stream().map(StandardParts::ends)
					.filter(ends -> ends.size() == 1 && ends.get(0).getFamily() == family)
					.map(ends -> ends.get(0).getGender())
					.collect(Collectors.toSet()), kind.getSimpleName() + " of " + family.getName());
		}
	}

	/** A connector that fits nothing is a slip of the catalog. */
	@Test
	void everyConnectorMatesWithThatOfAnotherPart() {
		List<PartType> parts = StandardParts.all(PartType.class);
		for (PartType part : parts) {
			for (End end : StandardParts.connectors(part)) {
				assertTrue(parts.stream().filter(other -> other != part).flatMap(other -> StandardParts.connectors(other).stream())
						.anyMatch(other -> StandardParts.mate(end, other)), part.getName());
			}
		}
	}

	/** The fuse protects the weakest of what it feeds: here, the contacts of the tap itself. */
	@ParameterizedTest
	@MethodSource("taps")
	void tapsAreFusedWithinTheirContactsAndWithASizeThatIsSold(TapType tap) {
		if (tap.getFuse() != null) {
			assertTrue(tap.getFuse().compareTo(tap.getEnds().get(0).getFamily().getRated()) <= 0, tap.getName());
			assertTrue(tap.getFuseType().getRatings().contains(tap.getFuse()), tap.getName());
		}
	}

	/** Public network fundamentals pages of a display maker: the supply is broken between two feeds, the return goes on. */
	@Test
	void thereIsAWayToSeparateTwoFeeds() {
		assertTrue(StandardParts.all(IsolatorType.class).stream().filter(IsolatorType::isBreaksSupply).anyMatch(IsolatorType::isJoinsReturn));
		assertTrue(StandardParts.all(IsolatorType.class).stream().allMatch(IsolatorType::isBreaksSupply));
		for (TapType tap : taps()) {
			assertEquals(tap.getFeeds() == FeedSides.BOTH, !tap.isBreaksSupply(), tap.getName());
		}
	}

	@ParameterizedTest
	@MethodSource("cords")
	void cordsRunFromPinsToOpenWiresAndAreFusedWithinTheirRating(CordType cord) {
		assertEquals(List.of(Gender.MALE, Gender.BARE), cord.getEnds().stream().map(End::getGender).toList());
		assertTrue(cord.getRated().compareTo(cord.getEnds().get(0).getFamily().getRated()) <= 0, cord.getName());
		assertNotNull(cord.getLength());
		assertNotNull(cord.getPower().getSize());
		if (cord.getFuse() != null) {
			assertTrue(cord.getFuse().compareTo(cord.getRated()) <= 0, cord.getName());
			assertTrue(cord.getFuseType().getRatings().contains(cord.getFuse()), cord.getName());
		}
		if (cord.getTerminates() != null) {
			assertEquals(new Resistance(120), cord.getTerminates());
		}
	}

	@Test
	void thereAreCordsWithAFuseWithoutAndWithATerminator() {
		assertTrue(cords().stream().anyMatch(cord -> cord.getFuse() == null));
		assertTrue(cords().stream().anyMatch(cord -> cord.getFuse() != null && cord.getTerminates() == null));
		assertTrue(cords().stream().anyMatch(cord -> cord.getTerminates() != null));
	}

	/** The more current, the sooner it opens; at its rating it holds. */
	@ParameterizedTest
	@MethodSource("fuses")
	void openingCurveFalls(FuseType fuse) {
		assertTrue(fuse.getOpenings().size() >= 3, fuse.getName());
		assertEquals(fuse.getRatings().stream().sorted().distinct().toList(), fuse.getRatings(), fuse.getName());
		assertTrue(fuse.getOpenings().get(0).getTimes() > 1, fuse.getName());
		for (int at = 1; at < fuse.getOpenings().size(); at++) {
			FuseOpening before = fuse.getOpenings().get(at - 1);
			FuseOpening here = fuse.getOpenings().get(at);
			assertTrue(here.getTimes() > before.getTimes() && here.getWithin().compareTo(before.getWithin()) < 0, fuse.getName());
		}
		assertTrue(fuse.getInterrupts().compareTo(fuse.getRatings().get(fuse.getRatings().size() - 1)) > 0, fuse.getName());
	}

	/** ISO 8820-3, blade fuses, longest times (from memory): 10 min at 135 %, 50 s at 160 %, 5 s at 200 %, half a second at 350 %. */
	@Test
	void bladeFuseOpensAsTheStandardSays() {
		Map<Double, Duration> curve = fuses().stream().filter(fuse -> fuse.getName().equals("bladeFuse")).findFirst().orElseThrow()
				.getOpenings().stream().collect(Collectors.toMap(FuseOpening::getTimes, FuseOpening::getWithin));
		assertEquals(Map.of(1.35, new Duration(600), 1.6, new Duration(50), 2.0, new Duration(5), 3.5, new Duration(0.5)), curve);
	}

	private static void assertPinsThenSockets(String part, List<End> ends) {
		assertEquals(List.of(Gender.MALE, Gender.FEMALE), ends.stream().map(End::getGender).toList(), part);
	}
}
