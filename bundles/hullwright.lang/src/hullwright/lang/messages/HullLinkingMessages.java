/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.messages;

import com.google.inject.Inject;
import hullwright.lang.LanguageProblem;
import hullwright.lang.imports.VisibleCatalogs;
import hullwright.lang.scoping.HullScopeProvider;
import hullwright.lang.scoping.PortOwner;
import hullwright.lang.scoping.ReferencedKind;
import hullwright.spec.Catalog;
import hullwright.spec.HullChange;
import hullwright.spec.MessageUse;
import hullwright.spec.Named;
import hullwright.spec.Series;
import hullwright.spec.SpecPackage;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.diagnostics.DiagnosticMessage;
import org.eclipse.xtext.diagnostics.Severity;
import org.eclipse.xtext.linking.impl.LinkingDiagnosticMessageProvider;
import org.eclipse.xtext.naming.QualifiedName;

/**
 * Says which kind of thing has no such name, where it was looked for, and which name was perhaps meant.
 */
public class HullLinkingMessages extends LinkingDiagnosticMessageProvider {

	@Inject
	private HullScopeProvider scopes;

	@Inject
	private VisibleCatalogs catalogs;

	@Override
	public DiagnosticMessage getUnresolvedProxyMessage(ILinkingDiagnosticContext context) {
		EReference reference = context.getReference();
		EObject from = context.getContext();
		String name = context.getLinkText();
		List<Catalog> homes = catalogs.declaring(from, name);
		if (homes.size() > 1 && isCatalogEntry(reference.getEReferenceType())) {
			String choices = homes.stream().map(home -> home.getName() + "." + name).collect(Collectors.joining(" or "));
			return problem("'" + name + "' is in more than one catalog; write " + choices, Optional.empty());
		}
		EClass wanted = ReferencedKind.of(from, reference);
		if (homes.isEmpty() && isCatalogEntry(wanted) && catalogs.someImportFailed(from)) {
			// the name may well stand there; the import is told, and one cause is told once
			return null;
		}
		if (homes.size() == 1 && isCatalogEntry(wanted)) {
			return problem("'" + name + "' is " + SpecWords.oneOf(kindOf(homes.get(0), name)) + ", but " + SpecWords.oneOf(wanted)
					+ " is expected here", Optional.empty());
		}
		if (isOwnerUnknown(from, reference)) {
			return null;
		}
		// a PGN is no word with a slip in it: the number beside it is another message
		Optional<String> near = isNumber(name) ? Optional.empty() : NearestName.to(name, StreamSupport
				.stream(scopes.getScope(from, reference).getAllElements().spliterator(), false)
				.map(description -> description.getName())
				.filter(found -> found.getSegmentCount() == 1 || name.indexOf('.') >= 0)
				.map(QualifiedName::toString));
		String word = SpecWords.of(wanted);
		int ofWhat = word.contains(" of this ") ? word.indexOf(" of this ") : word.length();
		return problem("no " + word.substring(0, ofWhat) + " '" + name + "'" + word.substring(ofWhat) + whereLookedFor(from, reference)
				+ near.map(found -> "; did you mean '" + found + "'?").orElse(""), near);
	}

	/** Whether what the name would belong to is not known either, which is told there. */
	private static boolean isOwnerUnknown(EObject from, EReference reference) {
		if (reference == SpecPackage.Literals.MESSAGE_USE__VALUE) {
			return isUnknown(((MessageUse) from).getMessage());
		} else if (reference.getEReferenceType() == SpecPackage.Literals.PORT) {
			return isUnknown(PortOwner.type(from, reference));
		}
		HullChange change = EcoreUtil2.getContainerOfType(from, HullChange.class);
		return change != null && reference != SpecPackage.Literals.HULL_CHANGE__NETWORK && change.getNetwork() != null
				&& change.getNetwork().eIsProxy();
	}

	private static boolean isUnknown(EObject referred) {
		return referred == null || referred.eIsProxy();
	}

	private static boolean isNumber(String name) {
		return name.chars().allMatch(Character::isDigit);
	}

	private static DiagnosticMessage problem(String text, Optional<String> near) {
		return new DiagnosticMessage(text, Severity.ERROR, LanguageProblem.UNKNOWN_NAME, near.orElse(""));
	}

	private String whereLookedFor(EObject from, EReference reference) {
		if (reference.getEReferenceType() == SpecPackage.Literals.SWITCH && EcoreUtil2.getContainerOfType(from, Series.class).getSwitches().isEmpty()) {
			return "; the series declares its switches, for example: switch panel \"Navigation panel\"";
		}
		if (!isCatalogEntry(reference.getEReferenceType())) {
			return "";
		}
		if (reference.getEReferenceType() == SpecPackage.Literals.MESSAGE
				&& catalogs.from(from).stream().allMatch(catalog -> catalog.getMessages().isEmpty())) {
			return "; PGNs and sentences come with: import \"standard:messages\"";
		}
		List<String> names = catalogs.from(from).stream().map(Catalog::getName).distinct().toList();
		return names.isEmpty() ? "; this file imports no catalog" : " in " + String.join(" or ", names);
	}

	private static EClass kindOf(Catalog home, String name) {
		return Stream.of(home.getParts(), home.getFamilies(), home.getMessages())
				.<Named>flatMap(List::stream)
				.filter(entry -> name.equals(entry.getName()))
				.map(EObject::eClass)
				.findFirst()
				.orElseThrow();
	}

	private static boolean isCatalogEntry(EClass type) {
		return type == SpecPackage.Literals.FAMILY || type == SpecPackage.Literals.MESSAGE || SpecPackage.Literals.PART_TYPE.isSuperTypeOf(type);
	}
}
