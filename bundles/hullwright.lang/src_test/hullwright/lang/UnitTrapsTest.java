/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.quantity.AmericanWireGauge;
import hullwright.quantity.CrossSection;
import hullwright.quantity.Current;
import hullwright.quantity.Length;
import hullwright.quantity.Resistance;
import hullwright.quantity.Voltage;
import hullwright.spec.BackboneCable;
import hullwright.spec.CableType;
import hullwright.spec.DeviceType;
import hullwright.spec.Load;
import hullwright.spec.Drop;
import hullwright.spec.CableLeg;
import hullwright.spec.PortGroup;
import hullwright.spec.SupplySource;
import hullwright.spec.TerminatorType;
import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.resource.XtextResource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers, dots and units where a reader is never in doubt and a lexer easily is. */
class UnitTrapsTest {

	@ParameterizedTest
	@CsvSource({
			"7.5 m, 7.5", "7.5m, 7.5", "07.50 m, 7.5", "'7.5\tm', 7.5", "'7.5 /* fitted */ m', 7.5",
			"750 cm, 7.5", "7500 mm, 7.5", "0.0075 km, 7.5",
			// international foot and inch of 1959
			"10 ft, 3.048", "12 in, 0.3048", "12in, 0.3048" })
	void lengths(String written, double metres) {
		Drop drop = last(Drop.class, network("drop dash.1 via " + written + " of light to d : sensor"));
		assertEquals(metres, ((CableLeg) drop.getLegs().get(0)).getLength().metres(), 1e-12);
	}

	@Test
	void aPortIsNoDecimalPlace() {
		Drop drop = last(Drop.class, network("drop dash.1 via 7.5 m of light to d : sensor"));
		assertEquals("dash", drop.getFrom().getPart().getName());
		assertEquals(1, drop.getFrom().getPort());
		assertEquals(List.of(new Length(7.5)), drop.getLegs().stream().map(leg -> ((CableLeg) leg).getLength()).toList());
	}

	@ParameterizedTest
	@ValueSource(strings = { "ports 1..4 : f female", "ports 1 .. 4 : f female", "ports 1.. 4:f female" })
	void aRangeOfPortsIsNoDecimalNumber(String written) {
		PortGroup ports = last(PortGroup.class, catalog("tee block { " + written + " }"));
		assertEquals(1, ports.getFirst());
		assertEquals(4, ports.getLast());
	}

	@ParameterizedTest
	@ValueSource(strings = { "supply 9 V .. 16 V", "supply 9V..16V", "supply 9.0 V..16.0 V", "supply 9000 mV .. 16 V" })
	void aRangeOfVoltages(String written) {
		DeviceType device = last(DeviceType.class, catalog("device d { " + written + " }"));
		assertEquals(new Voltage(9), device.getLowest());
		assertEquals(new Voltage(16), device.getHighest());
	}

	@ParameterizedTest
	@ValueSource(strings = {
			"in line f male to f female; 120 ohm",
			"in line, f male to f female, 120 ohm",
			"120 ohm in line f male to f female",
			"120 ohm, in line, f male to f female",
			"120ohm in line f male to f female" })
	void inLineIsNoInch(String written) {
		TerminatorType terminator = last(TerminatorType.class, catalog("terminator t { " + written + " }"));
		assertTrue(terminator.isInLine());
		assertEquals(2, terminator.getEnds().size());
		assertEquals(new Resistance(120), terminator.getResistance());
	}

	@Test
	void anInchStandsBeforeTheNextWord() {
		List<BackboneCable> cables = EcoreUtil2.getAllContentsOfType(spec(network("backbone { cable 30 in cable 2 m of light }")), BackboneCable.class);
		assertEquals(List.of(new Length(30 * 0.0254), new Length(2)), cables.stream().map(BackboneCable::getLength).toList());
	}

	@ParameterizedTest
	@ValueSource(strings = { "12V", "12 V", "12.0 V", "12000 mV", "12\nV" })
	void voltsWithAndWithoutASpace(String written) {
		assertEquals(new Voltage(12), last(SupplySource.class, read("series S { supply house { " + written + " } }")).getNominal());
	}

	/** 1 LEN is 50 mA. */
	@ParameterizedTest
	@CsvSource({ "3 LEN, 0.15", "150 mA, 0.15", "0.15 A, 0.15", "1LEN, 0.05" })
	void loads(String written, double amperes) {
		Load load = last(DeviceType.class, catalog("device d { load " + written + " }")).getLoad();
		assertEquals(amperes, ((Current) load.getNominal()).amperes(), 1e-12);
	}

	@Test
	void wireGauge() {
		assertEquals(new AmericanWireGauge(22), last(CableType.class, catalog("cable c { power 22 AWG }")).getPower().getSize());
	}

	@ParameterizedTest
	@ValueSource(strings = { "1.5 mm2", "1.5 mm²", "1.5mm²", "1.5mm2" })
	void squareMillimetres(String written) {
		assertEquals(new CrossSection(1.5), last(CableType.class, catalog("cable c { power " + written + " }")).getPower().getSize());
	}

	/** Greek capital omega and the ohm sign look the same; Unicode calls them equivalent. */
	@ParameterizedTest
	@ValueSource(strings = { "120 ohm", "120 \u03A9", "120 \u2126", "120\u03A9", "0.12 kohm" })
	void ohms(String written) {
		assertEquals(120, last(TerminatorType.class, catalog("terminator t { " + written + " }")).getResistance().ohms(), 1e-9);
	}

	@ParameterizedTest
	@CsvSource({ "57 mohm/m, 0.057", "57.4 ohm/km, 0.0574", "0.057 ohm/m, 0.057" })
	void resistancePerLength(String written, double ohmsPerMetre) {
		CableType cable = last(CableType.class, catalog("cable c { power 22 AWG, " + written + " each way }"));
		assertEquals(ohmsPerMetre, cable.getPower().getResistance().ohmsPerMetre(), 1e-12);
	}

	@Test
	void stockLengthsAndTheNextProperty() {
		CableType cable = last(CableType.class, catalog("cable c { stock 0.5 m, 1 m, 2 m, rated 3 A, delay 4.46 ns/m, stock 30 in }"));
		assertEquals(List.of(new Length(0.5), new Length(1), new Length(2), new Length(30 * 0.0254)), cable.getStock());
		assertEquals(new Current(3), cable.getRated());
		assertEquals(4.46e-9, cable.getDelay().secondsPerMetre(), 1e-20);
	}

	/** Units are names of nothing: a part, a place or a family may be called like one. */
	@Test
	void unitsAreFreeAsNames() {
		XtextResource resource = read("""
				catalog m { family V { standard } cable A { ends V male, V female; stock 1 m } tee ft { port 1 : V female } device mm { lead 6 m V male } }
				series ohm {
				  places { cm; km }
				  network LEN { backbone of A { tee ft : ft at cm cable 6 m of A } drop ft.1 to mV : mm at km }
				}
				""");
		assertEquals(new Length(6), last(BackboneCable.class, resource).getLength());
	}

	private static XtextResource catalog(String part) {
		return read("catalog C { family f { standard } " + part + " }");
	}

	private static XtextResource network(String elements) {
		return read("""
				catalog C { family f { standard } cable light { stock 1 m } tee t { ports 1..4 : f female } device sensor { port p : f male } }
				series S { network n { backbone of light { tee dash : t } %s } }
				""".formatted(elements));
	}

	private static XtextResource read(String text) {
		XtextResource resource = new HullTexts().read(text);
		assertEquals(List.of(), HullTexts.describe(HullTexts.problems(resource)), text);
		return resource;
	}

	private static EObject spec(XtextResource resource) {
		return HullTexts.spec(resource);
	}

	/** The last element of a kind in the text: the one that a test wrote after the parts it needs. */
	private static <T extends EObject> T last(Class<T> type, XtextResource resource) {
		List<T> all = EcoreUtil2.getAllContentsOfType(spec(resource), type);
		return all.get(all.size() - 1);
	}
}
