/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import hullwright.analysis.conductor.MarineFeedWire;
import hullwright.analysis.wiring.Wiring;
import hullwright.network.Boat;
import hullwright.network.DeviceSettings.OwnFeed;
import hullwright.network.FittedDevice;
import hullwright.network.power.Supply;
import hullwright.network.power.SupplyLead;
import hullwright.quantity.AmericanWireGauge;
import hullwright.quantity.CrossSection;
import hullwright.quantity.Current;
import hullwright.quantity.Length;
import hullwright.quantity.Voltage;

/**
 * A lead beside what the feed-wire formula of the trade asks for it ({@link MarineFeedWire}): at 3 % for feeders, electronics
 * and all that safety hangs on, at 10 % for the rest.
 *
 * @param of the qualified name of the supply whose lead it is, or of the device for a lead of its own
 * @param supply the qualified name of the supply
 * @param lead the lead as the text tells it
 * @param current what it is sized for
 * @param basis why that current
 * @param nominal the nominal voltage of which the drop is a share
 * @param critical what the formula asks at 3 %
 * @param other what it asks at 10 %
 */
public record LeadSizing(String of, String supply, SupplyLead lead, Current current, Basis basis, Voltage nominal, Asked critical, Asked other) {

	/** What a lead is sized for. */
	public enum Basis {
		/** The rated current of its fuse: what it may have to carry for ever. */
		FUSE,
		/** The most that is drawn through it, since no fuse is stated. */
		DRAWN,
		/** What the catalog says that the device draws from its own supply. */
		OWN_DRAW
	}

	/**
	 * What the formula asks.
	 *
	 * @param area the area that the wire needs
	 * @param gauge the thinnest marine wire that has it; none if 2 AWG is too thin
	 * @param fulfilled whether the lead has it
	 */
	public record Asked(CrossSection area, Optional<AmericanWireGauge> gauge, boolean fulfilled) {

		private static Asked of(Current current, SupplyLead lead, Voltage permitted) {
			CrossSection area = MarineFeedWire.needed(current, new Length(2 * lead.length().metres()), permitted);
			return new Asked(area, MarineFeedWire.thinnest(area),
					MarineFeedWire.area(lead.size()).squareMillimetres() >= area.squareMillimetres());
		}
	}

	/** Which part of the lead's copper the formula asks for at 3 %, 1 being all of it. */
	public double asked() {
		return critical.area().squareMillimetres() / MarineFeedWire.area(lead.size()).squareMillimetres();
	}

	/**
	 * The leads of a boat; one whose voltage or current nothing tells is left out.
	 *
	 * @param flows operating points, for the currents where no fuse is stated
	 */
	public static List<LeadSizing> of(Boat boat, Wiring wiring, List<PowerFlow> flows) {
		List<LeadSizing> sizings = new ArrayList<>();
		for (Supply supply : boat.power().supplies()) {
			boolean used = wiring.entries().stream().anyMatch(each -> each.supply().equals(supply.name()));
			if (used && supply.lead().isPresent()) {
				Optional<Current> fuse = supply.fuse().map(each -> each.rating());
				Current current = fuse.orElseGet(() -> mostDrawn(supply.name(), flows));
				sized(boat, supply.name(), supply.name(), supply.lead().get(), current, fuse.isPresent() ? Basis.FUSE : Basis.DRAWN).ifPresent(sizings::add);
			}
		}
		Map<String, FittedDevice> devices = new LinkedHashMap<>();
		wiring.devices().forEach(each -> devices.putIfAbsent(each.device().name(), each.device()));
		boat.devices().forEach(each -> devices.putIfAbsent(each.name(), each));
		for (FittedDevice device : devices.values()) {
			Optional<Current> draws = device.model().power().ownSupply().flatMap(own -> own.draws());
			for (OwnFeed feed : device.settings().feeds()) {
				if (draws.isPresent() && feed.lead().isPresent()) {
					sized(boat, device.name(), feed.supply(), feed.lead().get(), draws.get(), Basis.OWN_DRAW).ifPresent(sizings::add);
				}
			}
		}
		return List.copyOf(sizings);
	}

	private static Current mostDrawn(String supply, List<PowerFlow> flows) {
		return flows.stream().flatMap(each -> each.entries().stream()).filter(each -> each.entry().supply().equals(supply))
				.map(EntryReading::current).max(Current::compareTo).orElse(new Current(0));
	}

	private static Optional<LeadSizing> sized(Boat boat, String of, String supply, SupplyLead lead, Current current, Basis basis) {
		return SourceVoltage.of(boat.power(), supply).filter(nominal -> nominal.volts() > 0 && current.amperes() > 0)
				.map(nominal -> new LeadSizing(of, supply, lead, current, basis, nominal,
						Asked.of(current, lead, nominal.times(MarineFeedWire.CRITICAL)), Asked.of(current, lead, nominal.times(MarineFeedWire.OTHER))));
	}
}
