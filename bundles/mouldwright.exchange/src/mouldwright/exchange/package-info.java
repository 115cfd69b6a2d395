/** Reading tables of offsets and drawings, writing meshes: what other programs exchange with this one. Metres throughout. */
package mouldwright.exchange;
