# Writes a drawing of sections with ezdxf, a reader and writer of drawings that is no part of this project, and what it takes their lines to be:
# a file of layer, x, y for points on them. Usage: sections.py DRAWING POINTS
import math
import sys
import ezdxf

doc = ezdxf.new("R2010")
doc.units = ezdxf.units.MM
space = doc.modelspace()


def on(name):
    return {"layer": name}


# a rounded box: lines and an arc, out of order, one drawn backwards
space.add_line((300, 350), (0, 350), dxfattribs=on("box"))
space.add_arc((300, 290), 60, 0, 90, dxfattribs=on("box"))
space.add_line((360, 290), (360, 20), dxfattribs=on("box"))
space.add_line((360, 20), (0, 20), dxfattribs=on("box"))

# a polyline with bulges, drawn on the port side
space.add_lwpolyline([(0, 400, 0), (-200, 380, 0.2), (-320, 200, 0.41421356), (-220, 60, 0), (0, 30, 0)], format="xyb", dxfattribs=on("bulged"))

# the same kind in the older manner
space.add_polyline2d([(0, 20, 0, 0, 0.3), (250, 120, 0, 0, 0.3), (0, 320, 0, 0, 0)], format="xyseb", dxfattribs=on("old"))

# a spline of degree three with weights, and one of degree five
spline = space.add_rational_spline(control_points=[(0, 10), (150, 10), (300, 60), (340, 200), (200, 330), (0, 340)], weights=[1, 2, 1, 3, 1, 1], degree=3, dxfattribs=on("weighted"))
space.add_open_spline([(0, 0), (120, 0), (240, 20), (320, 120), (330, 220), (200, 300), (0, 310)], degree=5, dxfattribs=on("fifth"))

# half an ellipse, one drawn from behind, and a whole one
space.add_ellipse((0, 200), major_axis=(0, 180), ratio=0.6, start_param=math.pi, end_param=2 * math.pi, dxfattribs=on("oval"))
space.add_ellipse((0, 200), major_axis=(0, -150), ratio=0.8, start_param=math.pi, end_param=2 * math.pi, dxfattribs={"layer": "ovalbehind", "extrusion": (0, 0, -1)})
space.add_ellipse((20, 200), major_axis=(200, 0), ratio=0.7, dxfattribs=on("egg"))

# splines of which only the points are written that they go through, one with directions at its ends; without, programs guess, which shows little where points are many
space.add_spline([(150 * math.sin(math.radians(a)), 200 - 180 * math.cos(math.radians(a))) for a in range(0, 181, 2)], dxfattribs=on("fitted"))
led = space.add_spline([(0, 20), (180, 50), (300, 180), (200, 330), (0, 360)], dxfattribs=on("led"))
led.dxf.start_tangent = (1, 0, 0)
led.dxf.end_tangent = (-1, 0, 0)

# an arc drawn from behind
space.add_arc((0, 200), 150, 90, 270, dxfattribs={"layer": "behind", "extrusion": (0, 0, -1)})

# all round: a circle that is not on the centreline's middle, and an outline of lines
space.add_circle((30, 200), 150, dxfattribs=on("round"))

# what is beside an outline, and what is none
space.add_text("S4", dxfattribs=on("box"))
space.add_polyline3d([(0, 0, 0), (100, 0, 50), (100, 100, 0)], dxfattribs=on("space"))
block = doc.blocks.new("B")
block.add_line((0, 0), (1, 1))
space.add_blockref("B", (0, 0), dxfattribs=on("block"))
space.add_line((0, 0), (100, 0), dxfattribs=on("gap"))
space.add_line((103, 0), (103, 100), dxfattribs=on("gap"))
space.add_line((103, 100), (0, 100), dxfattribs=on("gap"))

doc.saveas(sys.argv[1])


def places(entity):
    if entity.dxftype() in ("LWPOLYLINE", "POLYLINE"):
        for part in entity.virtual_entities():
            yield from places(part)
    elif entity.dxftype() == "LINE":
        yield from (entity.dxf.start, entity.dxf.end)
    else:
        yield from entity.flattening(0.01)


with open(sys.argv[2], "w") as out:
    for entity in space:
        if entity.dxf.layer in ("box", "bulged", "old", "weighted", "fifth", "behind", "round", "oval", "ovalbehind", "egg", "fitted", "led") and entity.dxftype() != "TEXT":
            for v in places(entity):
                out.write("%s,%r,%r\n" % (entity.dxf.layer, v.x, v.y))
