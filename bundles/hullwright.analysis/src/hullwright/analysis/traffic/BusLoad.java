/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import hullwright.quantity.BitRate;
import hullwright.quantity.Duration;

/**
 * How much of a bus its messages take.
 *
 * @param bus how fast the bus signals
 * @param regular what is sent regularly
 * @param events what events send at most, each as often as its least interval allows
 * @param messages the part of each message, in the order of the traffic
 * @param senders the part of each device, in the order of the traffic
 * @param busiestSecond the busiest second
 */
public record BusLoad(BitRate bus, TrafficRate regular, TrafficRate events, List<OfMessage> messages, List<OfSender> senders,
		BusiestSecond busiestSecond) {

	/** How fast networks of NMEA 2000 signal: 250 kbit/s. */
	public static final BitRate NMEA_2000 = new BitRate(250_000);

	/**
	 * The part of one message.
	 *
	 * @param message the message
	 * @param rate what it takes, at most if events send it
	 * @param onTheWire how long it takes at most when nothing comes between its frames
	 */
	public record OfMessage(BusMessage message, TrafficRate rate, Duration onTheWire) {
	}

	/**
	 * The part of one device.
	 *
	 * @param sender the qualified name of the device
	 * @param regular what it sends regularly
	 * @param events what events send at most
	 */
	public record OfSender(String sender, TrafficRate regular, TrafficRate events) {
	}

	public BusLoad {
		messages = List.copyOf(messages);
		senders = List.copyOf(senders);
	}

	/**
	 * The load of a bus.
	 *
	 * @param bus how fast it signals, above zero
	 */
	public static BusLoad of(NetworkTraffic traffic, BitRate bus) {
		TrafficRate regular = TrafficRate.NONE;
		TrafficRate events = TrafficRate.NONE;
		List<OfMessage> messages = new ArrayList<>();
		Map<String, OfSender> senders = new LinkedHashMap<>();
		for (BusMessage message : traffic.messages()) {
			TrafficRate rate = TrafficRate.of(message.packet(), message.release().interval());
			TrafficRate asRegular = message.release().regular() ? rate : TrafficRate.NONE;
			TrafficRate asEvent = message.release().regular() ? TrafficRate.NONE : rate;
			regular = regular.plus(asRegular);
			events = events.plus(asEvent);
			messages.add(new OfMessage(message, rate, new Duration(message.packet().worstBits() / bus.bitsPerSecond())));
			senders.merge(message.sender(), new OfSender(message.sender(), asRegular, asEvent),
					(one, other) -> new OfSender(one.sender, one.regular.plus(other.regular), one.events.plus(other.events)));
		}
		return new BusLoad(bus, regular, events, messages, List.copyOf(senders.values()), BusiestSecond.of(traffic, bus));
	}

	/** All of it: what is sent regularly, and what events send at most. */
	public TrafficRate total() {
		return regular.plus(events);
	}

	/** The fast packets, those that hold the bus longest first. */
	public List<OfMessage> bursts() {
		return messages.stream().filter(each -> each.message.packet().fast())
				.sorted(Comparator.comparing(OfMessage::onTheWire).reversed()).toList();
	}
}
