/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check.plugin;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Reads from the plugin.xml of a plugin which rules it contributes, with the words that the extension point has for it.
 */
final class ContributedRules {

	private static final String DESCRIPTOR = "plugin.xml";
	private static final String POINT = "hullwright.rules.rule";

	private ContributedRules() {
	}

	static List<String> of(Map<String, byte[]> entries) throws PluginRefused {
		byte[] descriptor = entries.get(DESCRIPTOR);
		if (descriptor == null) {
			throw new PluginRefused("it is no plugin: it has no " + DESCRIPTOR);
		}
		List<String> rules = new ArrayList<>();
		try {
			XMLStreamReader xml = factory().createXMLStreamReader(new ByteArrayInputStream(descriptor));
			boolean ours = false;
			while (xml.hasNext()) {
				int event = xml.next();
				if (event == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals("extension")) {
					ours = POINT.equals(xml.getAttributeValue(null, "point"));
				} else if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("extension")) {
					ours = false;
				} else if (event == XMLStreamConstants.START_ELEMENT && ours && xml.getLocalName().equals("rule")) {
					rules.add(ruleClass(xml, entries));
				}
			}
		} catch (XMLStreamException e) {
			throw new PluginRefused("it has a " + DESCRIPTOR + " that cannot be read: line " + e.getLocation().getLineNumber() + ": "
					+ e.getMessage().lines().reduce((first, last) -> last).orElse("").replaceFirst("^Message: ", ""));
		}
		if (rules.isEmpty()) {
			throw new PluginRefused("it has no rule: its " + DESCRIPTOR + " contributes none at " + POINT);
		}
		return rules;
	}

	private static String ruleClass(XMLStreamReader xml, Map<String, byte[]> entries) throws PluginRefused {
		String name = xml.getAttributeValue(null, "class");
		String place = DESCRIPTOR + " line " + xml.getLocation().getLineNumber();
		if (name == null || name.isBlank()) {
			throw new PluginRefused("it contributes a rule without a class, " + place);
		}
		if (!entries.containsKey(name.replace('.', '/') + ".class")) {
			throw new PluginRefused("it does not hold the class " + name + " that it contributes as a rule, " + place);
		}
		return name;
	}

	/** Descriptors are read before they are trusted: nothing that they name is opened. */
	private static XMLInputFactory factory() {
		XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
		factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
		factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
		return factory;
	}
}
