"""The canonical landing once more, with SciPy's integrator: rows of inputs on standard input, 13 results a row on standard output.

Written from the definition, not from the library: an independent reference. A landing that cannot happen gives an empty row.
"""
import csv
import math
import sys

import numpy as np
from scipy.integrate import solve_ivp

G = 9.80665
COLUMNS = ["approach_thrust", "flare_height", "flare_start_x", "flare_start_v", "hold_off_end_x", "hold_off_end_v", "touchdown_x",
           "touchdown_v", "touchdown_sink", "touchdown_time", "nose_lower_x", "stop_x", "stop_time"]


class Refused(Exception):
    pass


class Landing:
    def __init__(self, row):
        self.__dict__.update({name: float(value) for name, value in row.items()})
        self.weight = self.mass * G
        self.induced = 1 / (math.pi * self.oswald * self.span ** 2 / self.wing_area)

    def pressure_force(self, v):
        return 0.5 * self.density * v * abs(v) * self.wing_area

    def drag(self, v, lift, height):
        remains = 1 - math.exp(-2.48 * (2 * max(height + self.wing_height, 1e-3) / self.span) ** 0.768)
        qs = self.pressure_force(v)
        return qs * (self.cd0 + remains * self.induced * (lift / qs) ** 2)

    def path_acceleration(self, t, v, lift, height, sine):
        return (self.thrust(t, v) - self.drag(v, lift, height)) / self.mass - G * sine

    def idle(self, v):
        return self.idle_thrust + self.idle_thrust_slope * v + self.idle_thrust_curvature * v * v

    def thrust(self, t, v):
        since = t - self.cut
        if since < 0:
            return self.approach_thrust
        if since >= self.power_cut_time:
            return self.idle(v)
        return self.approach_thrust + (self.idle(v) - self.approach_thrust) * since / self.power_cut_time

    def run(self, rates, t, y, ended, longest):
        """To the event or the longest time, in pieces that begin and end at the kinks of the thrust."""
        ended.terminal = True
        edges = {self.cut, self.cut + self.power_cut_time}
        for to in [*sorted(edge for edge in edges if t < edge < t + longest), t + longest]:
            piece = solve_ivp(rates, (t, to), y, method="DOP853", rtol=1e-10, atol=1e-10, events=ended)
            t, y = piece.t[-1], piece.y[:, -1]
            if piece.status == 1:
                return t, y, True
        return t, y, False

    def fly(self):
        w, tau, hh = self.headwind, self.flare_time_constant, self.hold_off_height
        k = math.tan(math.radians(self.path_angle_deg))
        sink = k * (math.sqrt(self.threshold_speed ** 2 * (1 + k * k) - w * w * k * k) - w) / (1 + k * k)
        sine = -sink / self.threshold_speed
        self.approach_thrust = self.drag(
            self.threshold_speed, self.weight * math.sqrt(1 - sine * sine), self.threshold_height) + self.weight * sine
        self.flare_height = hh + sink * tau
        if self.flare_height >= self.threshold_height or self.approach_thrust < self.idle(self.threshold_speed):
            raise Refused
        flare_time = (self.threshold_height - self.flare_height) / sink
        if self.power_cut_height >= self.threshold_height:
            self.cut = 0.0
        elif self.power_cut_height <= hh:
            self.cut = math.inf
        elif self.power_cut_height >= self.flare_height:
            self.cut = (self.threshold_height - self.power_cut_height) / sink
        else:
            self.cut = flare_time + tau * math.log((self.flare_height - hh) / (self.power_cut_height - hh))

        def approach(t, y):
            s = -sink / y[1]
            c = math.sqrt(1 - s * s)
            return [y[1] * c - w, self.path_acceleration(t, y[1], self.weight * c, self.threshold_height - sink * t, s)]

        t, y, _ = self.run(approach, 0.0, [0.0, self.threshold_speed], lambda t, y: 1.0, flare_time)
        self.flare_start_x, self.flare_start_v = y

        def rounding_out(t, v):
            above = (self.flare_height - hh) * math.exp(-(t - flare_time) / tau)
            s = -above / tau / v
            c = math.sqrt(max(0.0, 1 - s * s))
            return hh + above, s, c, self.weight * c + self.mass * above / tau ** 2

        def hold_off(t, y):
            height, s, c, lift = rounding_out(t, y[1])
            return [y[1] * c - w, self.path_acceleration(t, y[1], lift, height, s)]

        limit = self.touchdown_lift_fraction * self.cl_max

        def at_the_lift(t, y):
            return rounding_out(t, y[1])[3] / self.pressure_force(y[1]) - limit

        if at_the_lift(t, y) >= 0:
            raise Refused
        t, y, ended = self.run(hold_off, t, y, at_the_lift, 120)
        if not ended:
            raise Refused
        self.hold_off_end_x, self.hold_off_end_v = y
        height, s, _, _ = rounding_out(t, y[1])

        def settling(t, y):
            v, angle = y[1], y[2]
            lift = self.pressure_force(v) * limit
            return [v * math.cos(angle) - w, self.path_acceleration(t, v, lift, y[3], math.sin(angle)),
                    (lift - self.weight * math.cos(angle)) / (self.mass * v), v * math.sin(angle)]

        t, y, ended = self.run(settling, t, [y[0], y[1], math.asin(s), height], lambda t, y: y[3], 60)
        if not ended:
            raise Refused
        self.touchdown_x, self.touchdown_v, self.touchdown_time = y[0], y[1], t
        self.touchdown_sink = -y[1] * math.sin(y[2])
        slope = math.atan(self.runway_slope)

        def roll(lift, friction):
            def rates(t, y):
                qs = self.pressure_force(y[1])
                normal = max(0.0, self.weight * math.cos(slope) - abs(qs) * lift)
                # The coefficient does not care which way the air goes; the drag does.
                drag = self.drag(y[1], qs * lift, 0.0) if qs else 0.0
                return [y[1] - w, (self.thrust(t, y[1]) - drag - friction * normal - self.weight * math.sin(slope)) / self.mass]
            return rates

        lowered = self.nose_lower_speed_fraction * self.touchdown_v
        t, y, ended = self.run(roll(self.nose_high_lift_coefficient, self.rolling_friction), t,
                               [y[0], y[1] * math.cos(y[2])], lambda t, y: y[1] - lowered, 300)
        if not ended:
            raise Refused
        self.nose_lower_x = y[0]
        t, y, ended = self.run(roll(self.level_lift_coefficient, self.braking_friction), t, y, lambda t, y: y[1] - w, 300)
        if not ended:
            raise Refused
        self.stop_x, self.stop_time = y[0], t
        return [getattr(self, name) for name in COLUMNS]


def main():
    for row in csv.DictReader(sys.stdin):
        try:
            print(",".join(repr(float(np.asarray(value))) for value in Landing(row).fly()))
        except Refused:
            print()


main()
