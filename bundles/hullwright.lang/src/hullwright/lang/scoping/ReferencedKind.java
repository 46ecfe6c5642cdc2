/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.scoping;

import java.util.Objects;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.xtext.CrossReference;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/**
 * What kind of thing a reference asks for. The grammar is sharper than the model where one reference serves several kinds:
 * a backbone part's type is a tee after the word 'tee' and a tap after 'tap'.
 */
public final class ReferencedKind {

	private ReferencedKind() {
	}

	/** The kind that the text asks for, or that of the model if nothing is written yet. */
	public static EClass of(EObject context, EReference reference) {
		return NodeModelUtils.findNodesForFeature(context, reference).stream()
				.map(INode::getGrammarElement)
				.map(element -> EcoreUtil2.getContainerOfType(element, CrossReference.class))
				.filter(Objects::nonNull)
				.map(written -> written.getType().getClassifier())
				.filter(EClass.class::isInstance)
				.map(EClass.class::cast)
				.findFirst()
				.orElse(reference.getEReferenceType());
	}
}
