/**
 * What an editor asks about a spec: what may stand at a place, what stands there, where a name is used, how a text is coloured and folded. Places
 * are offsets in characters; which protocol carries the answers is not known here.
 */
package mouldwright.language.ide;
