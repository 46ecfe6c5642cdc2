/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.quantity.Current;
import hullwright.quantity.Duration;
import hullwright.quantity.Length;
import hullwright.quantity.Resistance;
import hullwright.quantity.Voltage;
import hullwright.spec.DevicePort;
import hullwright.spec.DeviceType;
import hullwright.spec.End;
import hullwright.spec.Gender;
import hullwright.spec.LoadBehaviour;
import hullwright.spec.Message;
import hullwright.spec.MessageUse;
import hullwright.spec.Pgn;
import hullwright.spec.Sending;
import hullwright.spec.Showing;
import hullwright.spec.Turning;
import hullwright.spec.Wanting;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Holds the devices of the standard catalogs against the limits of the trade, and against each other: what one wants,
 * another must send. Their figures are invented.
 */
class StandardDevicesTest {

	/** The number of an alert is given by the unit that raises it, not by the installer. */
	private static final Set<String> ALERTS = Set.of("126983", "126984", "126985", "126986", "126987", "126988");

	static List<DeviceType> devices() {
		return StandardParts.all(DeviceType.class);
	}

	static List<DeviceType> busDevices() {
		return StandardParts.busDevices();
	}

	/** Public guides: 9 V to 16 V at every device. */
	@ParameterizedTest
	@MethodSource("busDevices")
	void busDevicesHavePinsAndBearTheVoltagesOfTheNetwork(DeviceType device) {
		assertEquals(Set.of(Gender.MALE), StandardParts.busEnds(device).stream().map(End::getGender).collect(Collectors.toSet()));
		assertTrue(device.getLowest().compareTo(new Voltage(9)) <= 0, device.getName());
		assertTrue(device.getHighest().compareTo(new Voltage(16)) >= 0, device.getName());
	}

	/** A public article of a gateway maker: above 1 A (20 LEN) a device takes an isolated supply of its own. */
	@ParameterizedTest
	@MethodSource("busDevices")
	void noDeviceTakesMoreThanOneAmpereFromTheNetwork(DeviceType device) {
		Current most = StandardParts.mostCurrent(device.getLoad());
		assertTrue(most.loadEquivalencyNumber() >= 1, device.getName());
		assertTrue(most.compareTo(new Current(1)) <= 0, device.getName());
		assertTrue(!device.isOwnSupply() || device.isIsolated(), device.getName());
	}

	/** What is fed by itself says how much it takes there. */
	@ParameterizedTest
	@MethodSource("devices")
	void ownSupplyStatesItsDraw(DeviceType device) {
		assertEquals(device.isOwnSupply(), device.getOwnLoad() != null, device.getName());
	}

	/** Electronics behind a converter take constant power; lamps are resistors. Both kinds must be there to be computed with. */
	@Test
	void loadsBehaveInEveryWayThatOccurs() {
		assertEquals(Set.of(LoadBehaviour.BY_UNIT, LoadBehaviour.CONSTANT_CURRENT, LoadBehaviour.RESISTIVE, LoadBehaviour.CONSTANT_POWER),
				busDevices().stream().map(device -> device.getLoad().getBehaviour()).collect(Collectors.toSet()));
		assertTrue(busDevices().stream().anyMatch(device -> device.getLoad().getStart() != null));
	}

	@ParameterizedTest
	@MethodSource("devices")
	void everyDeviceSaysWhereItMayStand(DeviceType device) {
		assertFalse(device.getSuits().isEmpty(), device.getName());
		assertEquals(device.getSuits().stream().distinct().toList(), device.getSuits(), device.getName());
		Length apart = device.getCompassDistance();
		assertTrue(apart == null || apart.compareTo(Length.ZERO) > 0 && apart.compareTo(new Length(3)) <= 0, device.getName());
	}

	/** Public installation manual of an autopilot computer, p. 10: some mast-head sensors have a terminator in the head unit. */
	@Test
	void oneSensorHasABuiltInTerminator() {
		List<DeviceType> terminating = devices().stream().filter(device -> device.getTerminates() != null).toList();
		assertEquals(List.of("mastheadWindSensor"), terminating.stream().map(DeviceType::getName).toList());
		assertEquals(new Resistance(120), terminating.get(0).getTerminates());
	}

	@ParameterizedTest
	@MethodSource("devices")
	void everyDeviceTellsWantsShowsOrHandsOn(DeviceType device) {
		assertTrue(device.getSends().size() + device.getWants().size() + device.getShows().size() + device.getTurns().size()
				+ device.getPasses().size() > 0 || device.isPassesSettable(), device.getName());
	}

	@ParameterizedTest
	@MethodSource("devices")
	void whatIsSentHasAnIntervalAndAllThatTellsItApart(DeviceType device) {
		for (Sending sent : device.getSends()) {
			Message message = sent.getMessage();
			String where = device.getName() + " sends " + message.getName();
			assertTrue(sent.isOnEvent() != (sent.getEvery() != null), where);
			if (message instanceof Pgn pgn) {
				assertEquals(pgn.isInstance() && !ALERTS.contains(pgn.getName()), sent.isSettable() || sent.getInstance() != null, where);
				assertEquals(pgn.getKeys().stream().anyMatch(key -> !key.getValues().isEmpty()), sent.getValue() != null, where);
			}
		}
		assertEquals(device.getSends().stream().map(StandardDevicesTest::told).distinct().count(), device.getSends().size(), device.getName());
	}

	private static List<Object> told(Sending sent) {
		return Arrays.asList(sent.getMessage(), sent.getValue(), sent.getPort());
	}

	/** A PGN that is sent at another pace than by default says so in the device's source. */
	@ParameterizedTest
	@MethodSource("busDevices")
	void anIntervalThatIsNotTheDefaultIsOwnedUpTo(DeviceType device) {
		for (Sending sent : device.getSends()) {
			Duration usual = sent.getMessage().getEvery();
			boolean asUsual = sent.isOnEvent() ? sent.getMessage().isOnEvent() : sent.getEvery().equals(usual);
			assertTrue(asUsual || device.getSource().matches(".*(interval|as often|event).*"), device.getName() + " sends " + sent.getMessage().getName());
		}
	}

	/** A boat of standard parts must be possible for every device: somebody sends what it wants, as often as it wants it. */
	@ParameterizedTest
	@MethodSource("devices")
	void whatADeviceWantsAnotherSends(DeviceType device) {
		for (Wanting wanted : device.getWants()) {
			assertTrue(wanted.getUses().stream().anyMatch(use -> devices().stream().filter(other -> other != device)
					.anyMatch(other -> provides(other, use, wanted.getAtLeastEvery()))), device.getName() + " wants " + names(wanted.getUses()));
		}
	}

	private static boolean provides(DeviceType device, MessageUse use, Duration atLeastEvery) {
		return device.getSends().stream().anyMatch(sent -> sent.getMessage() == use.getMessage()
				&& (use.getValue() == null || use.getValue() == sent.getValue())
				&& (atLeastEvery == null || sent.getEvery() != null && sent.getEvery().compareTo(atLeastEvery) <= 0));
	}

	@Test
	void whatDevicesShowSomeDeviceSendsOrAGatewayMakes() {
		Set<String> available = devices().stream().flatMap(device -> device.getSends().stream()).map(sent -> sent.getMessage().getName())
				.collect(Collectors.toCollection(TreeSet::new));
		devices().stream().flatMap(device -> device.getTurns().stream()).map(Turning::getTo).forEach(to -> available.addAll(names(to)));
		Set<String> missing = devices().stream().flatMap(device -> device.getShows().stream()).map(Showing::getUses)
				.flatMap(uses -> names(uses).stream()).filter(name -> !available.contains(name)).collect(Collectors.toCollection(TreeSet::new));
		assertEquals(Set.of(), missing);
	}

	/** Every port of a device with two is told from the other by what it does. */
	@ParameterizedTest
	@MethodSource("busDevices")
	void twoPortsAreIsolatedAndSeveralAddressesAreStated(DeviceType device) {
		long ports = device.getPorts().stream().filter(DevicePort.class::isInstance).count();
		if (ports > 1) {
			assertEquals(1, device.getIsolations().size(), device.getName());
			assertNotNull(device.getIsolations().get(0).getOther());
		}
		assertTrue(device.getAddresses() == 0 || device.getAddresses() >= 2, device.getName());
	}

	@Test
	void someDevicesClaimSeveralAddresses() {
		assertTrue(devices().stream().filter(device -> device.getAddresses() >= 2).count() >= 3);
	}

	private static List<String> names(List<? extends MessageUse> uses) {
		return uses.stream().map(use -> use.getMessage().getName()).toList();
	}
}
