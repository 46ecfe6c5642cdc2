/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

import hullwright.lang.HullLanguage;
import hullwright.lang.imports.VisibleCatalogs;
import hullwright.network.Boat;
import hullwright.network.part.Adapter;
import hullwright.network.part.Cable;
import hullwright.network.part.Connector;
import hullwright.network.part.ConnectorFamily;
import hullwright.network.part.DeviceModel;
import hullwright.network.part.FuseKind;
import hullwright.network.part.Gender;
import hullwright.network.part.Part;
import hullwright.network.part.Tee;
import hullwright.network.power.Converter;
import hullwright.quantity.AmericanWireGauge;
import hullwright.quantity.Current;
import hullwright.quantity.Resistance;
import hullwright.quantity.ResistancePerLength;
import hullwright.quantity.Voltage;
import hullwright.resolve.SeriesPlan;
import hullwright.spec.Series;
import org.junit.jupiter.api.Test;

/**
 * What texts state for the electrical analyses reaches the records, and what they leave unsaid stays unsaid.
 */
class ElectricalFactsTest {

	private static final String CATALOG = """
			catalog Kit "Invented" {
			  family f "Screwed" { standard; rated 4 A; contact 5 mohm }
			  family g { vendor }
			  cable light { power 22 AWG; impedance 120 ohm }
			  cable heavy { power 15 AWG }
			  adapter cord { f male to g female; carries power; power 22 AWG, 57 mohm/m each way; signal 24 AWG }
			  adapter rigid { f male to g female; carries power }
			  fuse blade { rated 3 A; drops 150 mV }
			  fuse glass { rated 3 A }
			  device sensor { lead 6 m of light, f male; signal input resistance 30 kohm }
			  device heater { lead 2 m of Kit.heavy f male }
			  device plain { lead 1 m f male; terminates 120 ohm }
			  tee tee { backbone f male, f female; ports 1..2 : f female }
			  tee other { backbone g male, g female; port 1 : f female }
			}
			""";

	private static Boat boat(String series) {
		ReadProject project = new SpecReader().read(Snapshot.of(Map.of("kit.hull", CATALOG, "boat.hull",
				"import \"kit.hull\"\nseries Skerry \"Invented\" {\n" + series + "\n}\n")));
		assertEquals(List.of(), project.problems().stream().map(problem -> problem.origin().line() + " " + problem.message()).toList());
		Series read = (Series) project.files().get("boat.hull").getDeclarations().get(0);
		return new SeriesPlan(read, HullLanguage.services().getInstance(VisibleCatalogs.class).from(read), new TextOrigins())
				.boat(SeriesPlan.ordered(new TreeSet<>()));
	}

	private static <P extends Part> P part(Class<P> kind, String name) {
		return boat("").partsOnOffer().of(kind).stream().filter(part -> part.identity().name().equals(name)).findFirst().orElseThrow();
	}

	@Test
	void aConnectorKnowsWhatItsFamilyStates() {
		Connector stated = part(Tee.class, "tee").ends().first().orElseThrow();
		assertEquals(new ConnectorFamily("f", "Screwed", true, Optional.of(new Current(4)), Optional.of(new Resistance(0.005))), stated.family());
		assertEquals("f male", stated.toString());
		assertEquals(new ConnectorFamily("g", "", false, Optional.empty(), Optional.empty()),
				part(Tee.class, "other").ends().first().orElseThrow().family());
	}

	@Test
	void theConnectorsOfOneBoatShareTheirFamilies() {
		List<Tee> tees = boat("").partsOnOffer().of(Tee.class);
		List<Connector> ports = tees.stream().flatMap(tee -> tee.ports().values().stream()).map(Optional::orElseThrow).toList();
		assertEquals(3, ports.size());
		ports.forEach(port -> assertSame(ports.get(0).family(), port.family()));
	}

	@Test
	void aCableKnowsItsImpedance() {
		assertEquals(Optional.of(new Resistance(120)), part(Cable.class, "light").impedance());
		assertEquals(Optional.empty(), part(Cable.class, "heavy").impedance());
	}

	@Test
	void anAdapterKnowsItsConductors() {
		Adapter cord = part(Adapter.class, "cord");
		assertEquals(Optional.of(new Cable.Conductor(new AmericanWireGauge(22), Optional.of(new ResistancePerLength(0.057)))), cord.power());
		assertEquals(Optional.of(new Cable.Conductor(new AmericanWireGauge(24), Optional.empty())), cord.signal());
		Adapter rigid = part(Adapter.class, "rigid");
		assertTrue(rigid.power().isEmpty() && rigid.signal().isEmpty());
	}

	@Test
	void aFuseKnowsItsDrop() {
		assertEquals(Optional.of(new Voltage(0.15)), part(FuseKind.class, "blade").drop());
		assertEquals(Optional.empty(), part(FuseKind.class, "glass").drop());
	}

	@Test
	void aLeadKnowsWhatItIsMadeOf() {
		List<DeviceModel> devices = boat("").partsOnOffer().of(DeviceModel.class);
		assertEquals(List.of("6 m light f male", "2 m heavy f male", "1 m unstated f male"), devices.stream()
				.map(device -> device.lead().orElseThrow())
				.map(lead -> lead.length() + " " + lead.cable().map(cable -> cable.identity().name()).orElse("unstated") + " "
						+ lead.connector().orElseThrow())
				.toList());
	}

	/** Its terminating resistor is told apart from what every device puts across the pair. */
	@Test
	void aDeviceKnowsItsInputResistance() {
		assertEquals(Optional.of(new Resistance(30_000)), part(DeviceModel.class, "sensor").inputResistance());
		DeviceModel terminated = part(DeviceModel.class, "plain");
		assertEquals(Optional.empty(), terminated.inputResistance());
		assertEquals(Optional.of(new Resistance(120)), terminated.terminates());
	}

	@Test
	void aConverterKnowsItsEfficiency() {
		List<Converter> converters = boat("converter stated { 12 V; efficiency 85 % } converter plain { 12 V }").power().converters();
		assertEquals(0.85, converters.get(0).efficiency().orElseThrow().fraction(), 1e-12);
		assertEquals(Optional.empty(), converters.get(1).efficiency());
	}

	/** A yard's own catalog may declare the family of the standard one again, with values of its own. */
	@Test
	void familiesOfOneNameMate() {
		ConnectorFamily one = new ConnectorFamily("micro", "", true, Optional.of(new Current(4)), Optional.empty());
		ConnectorFamily same = new ConnectorFamily("micro", "M12", true, Optional.of(new Current(3)), Optional.empty());
		ConnectorFamily other = new ConnectorFamily("mini", "", true, Optional.of(new Current(4)), Optional.empty());
		assertEquals(List.of(true, false, false), List.of(
				new Connector(one, Gender.MALE).mates(new Connector(same, Gender.FEMALE)),
				new Connector(one, Gender.MALE).mates(new Connector(same, Gender.MALE)),
				new Connector(one, Gender.MALE).mates(new Connector(other, Gender.FEMALE))));
	}
}
