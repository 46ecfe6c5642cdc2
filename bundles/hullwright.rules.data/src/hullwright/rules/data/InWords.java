/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.network.DevicePortRef;
import hullwright.network.Origin;
import hullwright.network.data.MessageUse;
import hullwright.quantity.BitRate;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Names and messages as people say them.
 */
final class InWords {

	/** How many of a list are named before the rest is counted. */
	private static final int NAMED = 3;

	private InWords() {
	}

	/** Devices, lines or networks by their own names: {@code pilot, radar and 2 more}. */
	static String names(Collection<String> qualified) {
		return list(qualified.stream().distinct().map(InWords::name).toList());
	}

	/** The last part of a qualified name, as the text writes it. */
	static String name(String qualified) {
		return Origin.nowhere(qualified).simpleName();
	}

	/** Messages of which any one will do, with the title of the first: {@code heading (127250 as magnetic or 127250 as true)}. */
	static String anyOf(List<MessageUse> uses) {
		String numbers = uses.stream().map(MessageUse::toString).distinct().collect(Collectors.joining(" or "));
		String title = title(uses.get(0));
		return title.isEmpty() ? numbers : title + " (" + numbers + ")";
	}

	/** A message with its title: {@code water depth (128267)}. */
	static String message(MessageUse use) {
		return anyOf(List.of(use));
	}

	/** Messages by their numbers or formatters alone. */
	static String messages(Collection<MessageUse> uses) {
		return list(uses.stream().map(MessageUse::toString).distinct().toList());
	}

	/** A port of a device: {@code compass.out}. */
	static String port(DevicePortRef port) {
		return name(port.device()) + "." + port.port();
	}

	/** Ports of devices. */
	static String ports(Collection<DevicePortRef> ports) {
		return list(ports.stream().map(InWords::port).distinct().toList());
	}

	/** Rates of which any one will do. */
	static String rates(Collection<BitRate> rates) {
		return rates.stream().map(BitRate::toString).distinct().collect(Collectors.joining(" or "));
	}

	/** Some of a list, and how many more. */
	static String list(List<String> items) {
		List<String> shown = items.size() > NAMED + 1 ? items.subList(0, NAMED) : items;
		String last = shown.size() < items.size() ? items.size() - shown.size() + " more" : shown.get(shown.size() - 1);
		List<String> before = shown.size() < items.size() ? shown : shown.subList(0, shown.size() - 1);
		return before.isEmpty() ? last : String.join(", ", before) + " and " + last;
	}

	/** The title of a message as it stands within a sentence; abbreviations keep their capitals. */
	private static String title(MessageUse use) {
		String title = use.message().title();
		return title.length() < 2 || Character.isUpperCase(title.charAt(1)) ? title : Character.toLowerCase(title.charAt(0)) + title.substring(1);
	}
}
