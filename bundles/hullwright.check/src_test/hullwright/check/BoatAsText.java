/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import hullwright.network.Boat;
import hullwright.network.Origin;
import hullwright.network.PartsOnOffer;

/**
 * Writes down all of a boat except where in the text it came from. What stands in no order on board is sorted; a walk, a way
 * and the two sides of something keep their order.
 */
final class BoatAsText {

	private static final Set<String> IN_ORDER = Set.of("elements", "legs", "from", "places", "stock", "openings", "ports");

	private BoatAsText() {
	}

	static String of(Boat boat) {
		return text("boat", boat);
	}

	private static String text(String name, Object value) {
		if (value instanceof Origin || value instanceof PartsOnOffer) {
			return "";
		} else if (value instanceof Optional<?> optional) {
			return optional.map(content -> text(name, content)).orElse("-");
		} else if (value instanceof Map<?, ?> map) {
			return sorted(map.entrySet().stream().map(entry -> text("", entry.getKey()) + "=" + text(name, entry.getValue())).toList()).toString();
		} else if (value instanceof Collection<?> collection) {
			List<String> texts = collection.stream().map(each -> text(name, each)).toList();
			return (IN_ORDER.contains(name) ? texts : sorted(texts)).toString();
		}
		return value instanceof Record record ? recordText(record) : String.valueOf(value);
	}

	private static List<String> sorted(List<String> texts) {
		List<String> sorted = new ArrayList<>(texts);
		Collections.sort(sorted);
		return sorted;
	}

	private static String recordText(Record record) {
		StringBuilder text = new StringBuilder(record.getClass().getSimpleName()).append('(');
		for (RecordComponent component : record.getClass().getRecordComponents()) {
			try {
				component.getAccessor().setAccessible(true);
				text.append(component.getName()).append(' ').append(text(component.getName(), component.getAccessor().invoke(record))).append("; ");
			} catch (ReflectiveOperationException e) {
				throw new IllegalStateException(e);
			}
		}
		return text.append(")\n").toString();
	}
}
