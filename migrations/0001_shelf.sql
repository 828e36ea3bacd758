CREATE TABLE `shelf_part_box` (
	`part` integer PRIMARY KEY NOT NULL,
	`kind` text NOT NULL,
	`turns` text,
	`turns_ratio` real,
	`sweep` text,
	`sweep_rad` real,
	`volume` text,
	`volume_m3` real,
	FOREIGN KEY (`part`,`kind`) REFERENCES `shelf_part`(`number`,`kind`) ON UPDATE no action ON DELETE cascade,
	CONSTRAINT "shelf_part_box_kind" CHECK("kind" IN ('steering box')),
	CONSTRAINT "shelf_part_box_turns" CHECK(length("turns") BETWEEN 1 AND 64),
	CONSTRAINT "shelf_part_box_turns_ratio" CHECK("turns_ratio" > 0 AND "turns_ratio" <= 10),
	CONSTRAINT "shelf_part_box_turns_ratio_too" CHECK(("turns" IS NULL) = ("turns_ratio" IS NULL)),
	CONSTRAINT "shelf_part_box_sweep" CHECK(length("sweep") BETWEEN 1 AND 64),
	CONSTRAINT "shelf_part_box_sweep_rad" CHECK("sweep_rad" > 0 AND "sweep_rad" <= 3.2),
	CONSTRAINT "shelf_part_box_sweep_rad_too" CHECK(("sweep" IS NULL) = ("sweep_rad" IS NULL)),
	CONSTRAINT "shelf_part_box_volume" CHECK(length("volume") BETWEEN 1 AND 64),
	CONSTRAINT "shelf_part_box_volume_m3" CHECK("volume_m3" > 0 AND "volume_m3" <= 0.1),
	CONSTRAINT "shelf_part_box_volume_m3_too" CHECK(("volume" IS NULL) = ("volume_m3" IS NULL))
) STRICT;
--> statement-breakpoint
CREATE TABLE `shelf_part_container` (
	`part` integer PRIMARY KEY NOT NULL,
	`kind` text NOT NULL,
	`volume` text,
	`volume_m3` real,
	FOREIGN KEY (`part`,`kind`) REFERENCES `shelf_part`(`number`,`kind`) ON UPDATE no action ON DELETE cascade,
	CONSTRAINT "shelf_part_container_kind" CHECK("kind" IN ('reservoir', 'cooler', 'filter')),
	CONSTRAINT "shelf_part_container_volume" CHECK(length("volume") BETWEEN 1 AND 64),
	CONSTRAINT "shelf_part_container_volume_m3" CHECK("volume_m3" > 0 AND "volume_m3" <= 0.1),
	CONSTRAINT "shelf_part_container_volume_m3_too" CHECK(("volume" IS NULL) = ("volume_m3" IS NULL))
) STRICT;
--> statement-breakpoint
CREATE TABLE `shelf_part_fluid` (
	`part` integer PRIMARY KEY NOT NULL,
	`kind` text NOT NULL,
	`grade` text,
	`bottle` text,
	`bottle_m3` real,
	FOREIGN KEY (`part`,`kind`) REFERENCES `shelf_part`(`number`,`kind`) ON UPDATE no action ON DELETE cascade,
	CONSTRAINT "shelf_part_fluid_kind" CHECK("kind" IN ('fluid')),
	CONSTRAINT "shelf_part_fluid_grade" CHECK(length("grade") BETWEEN 1 AND 200),
	CONSTRAINT "shelf_part_fluid_bottle" CHECK(length("bottle") BETWEEN 1 AND 64),
	CONSTRAINT "shelf_part_fluid_bottle_m3" CHECK("bottle_m3" > 0 AND "bottle_m3" <= 0.3),
	CONSTRAINT "shelf_part_fluid_bottle_m3_too" CHECK(("bottle" IS NULL) = ("bottle_m3" IS NULL))
) STRICT;
--> statement-breakpoint
CREATE TABLE `shelf_part_hose` (
	`part` integer PRIMARY KEY NOT NULL,
	`kind` text NOT NULL,
	`line` text,
	`bore` text,
	`bore_m` real,
	`length` text,
	`length_m` real,
	FOREIGN KEY (`part`,`kind`) REFERENCES `shelf_part`(`number`,`kind`) ON UPDATE no action ON DELETE cascade,
	CONSTRAINT "shelf_part_hose_kind" CHECK("kind" IN ('hose')),
	CONSTRAINT "shelf_part_hose_line" CHECK("line" IN ('pressure', 'return', 'suction', 'ram')),
	CONSTRAINT "shelf_part_hose_bore" CHECK(length("bore") BETWEEN 1 AND 64),
	CONSTRAINT "shelf_part_hose_bore_m" CHECK("bore_m" > 0 AND "bore_m" <= 0.5),
	CONSTRAINT "shelf_part_hose_bore_m_too" CHECK(("bore" IS NULL) = ("bore_m" IS NULL)),
	CONSTRAINT "shelf_part_hose_length" CHECK(length("length") BETWEEN 1 AND 64),
	CONSTRAINT "shelf_part_hose_length_m" CHECK("length_m" > 0 AND "length_m" <= 10),
	CONSTRAINT "shelf_part_hose_length_m_too" CHECK(("length" IS NULL) = ("length_m" IS NULL))
) STRICT;
--> statement-breakpoint
CREATE TABLE `shelf_part` (
	`number` integer PRIMARY KEY NOT NULL,
	`changed_at` text NOT NULL,
	`id` text NOT NULL,
	`kind` text NOT NULL,
	`name` text NOT NULL,
	`maker` text,
	`part_number` text,
	`supplier` text,
	`price` text,
	`quantity` integer,
	`state` text NOT NULL,
	`expected` text,
	`working_pressure` text,
	`working_pressure_pa` real,
	`note` text,
	CONSTRAINT "shelf_part_number" CHECK("number" > 0),
	CONSTRAINT "shelf_part_changed_at" CHECK("changed_at" GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]T*Z' AND datetime("changed_at") IS NOT NULL),
	CONSTRAINT "shelf_part_id" CHECK(length("id") BETWEEN 1 AND 64 AND "id" NOT GLOB '*[^a-z0-9-]*' AND "id" NOT GLOB '-*'),
	CONSTRAINT "shelf_part_kind" CHECK("kind" IN ('knuckle', 'steering arm', 'pitman arm', 'rod end', 'bung', 'clamp', 'bracket', 'adapter', 'fastener', 'damper', 'axle housing', 'other', 'tube', 'ram', 'hose', 'pump', 'steering box', 'reservoir', 'cooler', 'filter', 'fluid')),
	CONSTRAINT "shelf_part_name" CHECK(length("name") BETWEEN 1 AND 200),
	CONSTRAINT "shelf_part_maker" CHECK(length("maker") BETWEEN 1 AND 200),
	CONSTRAINT "shelf_part_part_number" CHECK(length("part_number") BETWEEN 1 AND 200),
	CONSTRAINT "shelf_part_supplier" CHECK(length("supplier") BETWEEN 1 AND 200),
	CONSTRAINT "shelf_part_price" CHECK(length("price") BETWEEN 1 AND 12 AND "price" GLOB '[0-9]*' AND "price" NOT GLOB '*[^0-9.]*'),
	CONSTRAINT "shelf_part_quantity" CHECK("quantity" BETWEEN 1 AND 10000),
	CONSTRAINT "shelf_part_state" CHECK("state" IN ('to order', 'ordered', 'here', 'fitted')),
	CONSTRAINT "shelf_part_expected" CHECK(length("expected") = 10 AND "expected" IS date("expected")),
	CONSTRAINT "shelf_part_working_pressure" CHECK(length("working_pressure") BETWEEN 1 AND 64),
	CONSTRAINT "shelf_part_working_pressure_pa" CHECK("working_pressure_pa" > 0 AND "working_pressure_pa" <= 100000000),
	CONSTRAINT "shelf_part_working_pressure_pa_too" CHECK(("working_pressure" IS NULL) = ("working_pressure_pa" IS NULL)),
	CONSTRAINT "shelf_part_note" CHECK(length("note") BETWEEN 0 AND 4000)
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `shelf_part_id_once` ON `shelf_part` (`id`);--> statement-breakpoint
CREATE UNIQUE INDEX `shelf_part_kind_once` ON `shelf_part` (`number`,`kind`);--> statement-breakpoint
CREATE TABLE `shelf_part_end` (
	`part` integer NOT NULL,
	`position` integer NOT NULL,
	`name` text NOT NULL,
	`connection` text NOT NULL,
	`connection_kind` text NOT NULL,
	`connection_family` text NOT NULL,
	`left_open` integer,
	`note` text,
	PRIMARY KEY(`part`, `name`),
	FOREIGN KEY (`part`) REFERENCES `shelf_part`(`number`) ON UPDATE no action ON DELETE cascade,
	CONSTRAINT "shelf_part_end_position" CHECK("position" >= 0),
	CONSTRAINT "shelf_part_end_name" CHECK(length("name") BETWEEN 1 AND 64 AND "name" NOT GLOB '*[^a-z0-9-]*' AND "name" NOT GLOB '-*'),
	CONSTRAINT "shelf_part_end_connection" CHECK(length("connection") BETWEEN 1 AND 160),
	CONSTRAINT "shelf_part_end_connection_kind" CHECK("connection_kind" IN ('thread', 'port', 'taper', 'round', 'spline', 'tail', 'weld', 'unmeasured')),
	CONSTRAINT "shelf_part_end_connection_family" CHECK("connection_family" IN ('unified', 'metric', 'npt', 'nptf', 'g', 'r', 'rc', 'rp', 'flare 37', 'o-ring boss', 'flare 45', 'inverted flare', 'face seal', 'iso 6149', 'iso 9974', 'iso 1179', 'cone 24 light', 'cone 24 heavy', 'bsp cone 60', 'banjo', 'tube o-ring', 'taper', 'round', 'spline', 'tail', 'weld', 'unmeasured')),
	CONSTRAINT "shelf_part_end_left_open" CHECK("left_open" = 1),
	CONSTRAINT "shelf_part_end_note" CHECK(length("note") BETWEEN 0 AND 4000)
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `shelf_part_end_position_once` ON `shelf_part_end` (`part`,`position`);--> statement-breakpoint
CREATE TABLE `shelf_part_plain` (
	`part` integer PRIMARY KEY NOT NULL,
	`kind` text NOT NULL,
	`length` text,
	`length_m` real,
	FOREIGN KEY (`part`,`kind`) REFERENCES `shelf_part`(`number`,`kind`) ON UPDATE no action ON DELETE cascade,
	CONSTRAINT "shelf_part_plain_kind" CHECK("kind" IN ('knuckle', 'steering arm', 'pitman arm', 'rod end', 'bung', 'clamp', 'bracket', 'adapter', 'fastener', 'damper', 'axle housing', 'other')),
	CONSTRAINT "shelf_part_plain_length" CHECK(length("length") BETWEEN 1 AND 64),
	CONSTRAINT "shelf_part_plain_length_m" CHECK("length_m" > 0 AND "length_m" <= 10),
	CONSTRAINT "shelf_part_plain_length_m_too" CHECK(("length" IS NULL) = ("length_m" IS NULL))
) STRICT;
--> statement-breakpoint
CREATE TABLE `shelf_part_pump` (
	`part` integer PRIMARY KEY NOT NULL,
	`kind` text NOT NULL,
	`relief_pressure` text,
	`relief_pressure_pa` real,
	`idle_flow` text,
	`idle_flow_m3_s` real,
	`cruise_flow` text,
	`cruise_flow_m3_s` real,
	`volume` text,
	`volume_m3` real,
	FOREIGN KEY (`part`,`kind`) REFERENCES `shelf_part`(`number`,`kind`) ON UPDATE no action ON DELETE cascade,
	CONSTRAINT "shelf_part_pump_kind" CHECK("kind" IN ('pump')),
	CONSTRAINT "shelf_part_pump_relief_pressure" CHECK(length("relief_pressure") BETWEEN 1 AND 64),
	CONSTRAINT "shelf_part_pump_relief_pressure_pa" CHECK("relief_pressure_pa" > 0 AND "relief_pressure_pa" <= 50000000),
	CONSTRAINT "shelf_part_pump_relief_pressure_pa_too" CHECK(("relief_pressure" IS NULL) = ("relief_pressure_pa" IS NULL)),
	CONSTRAINT "shelf_part_pump_idle_flow" CHECK(length("idle_flow") BETWEEN 1 AND 64),
	CONSTRAINT "shelf_part_pump_idle_flow_m3_s" CHECK("idle_flow_m3_s" > 0 AND "idle_flow_m3_s" <= 0.01),
	CONSTRAINT "shelf_part_pump_idle_flow_m3_s_too" CHECK(("idle_flow" IS NULL) = ("idle_flow_m3_s" IS NULL)),
	CONSTRAINT "shelf_part_pump_cruise_flow" CHECK(length("cruise_flow") BETWEEN 1 AND 64),
	CONSTRAINT "shelf_part_pump_cruise_flow_m3_s" CHECK("cruise_flow_m3_s" > 0 AND "cruise_flow_m3_s" <= 0.01),
	CONSTRAINT "shelf_part_pump_cruise_flow_m3_s_too" CHECK(("cruise_flow" IS NULL) = ("cruise_flow_m3_s" IS NULL)),
	CONSTRAINT "shelf_part_pump_volume" CHECK(length("volume") BETWEEN 1 AND 64),
	CONSTRAINT "shelf_part_pump_volume_m3" CHECK("volume_m3" > 0 AND "volume_m3" <= 0.1),
	CONSTRAINT "shelf_part_pump_volume_m3_too" CHECK(("volume" IS NULL) = ("volume_m3" IS NULL))
) STRICT;
--> statement-breakpoint
CREATE TABLE `shelf_part_ram` (
	`part` integer PRIMARY KEY NOT NULL,
	`kind` text NOT NULL,
	`ended` text,
	`bore` text,
	`bore_m` real,
	`rod` text,
	`rod_m` real,
	`stroke` text,
	`stroke_m` real,
	`closed_length` text,
	`closed_length_m` real,
	FOREIGN KEY (`part`,`kind`) REFERENCES `shelf_part`(`number`,`kind`) ON UPDATE no action ON DELETE cascade,
	CONSTRAINT "shelf_part_ram_kind" CHECK("kind" IN ('ram')),
	CONSTRAINT "shelf_part_ram_ended" CHECK("ended" IN ('single', 'double')),
	CONSTRAINT "shelf_part_ram_bore" CHECK(length("bore") BETWEEN 1 AND 64),
	CONSTRAINT "shelf_part_ram_bore_m" CHECK("bore_m" > 0 AND "bore_m" <= 0.5),
	CONSTRAINT "shelf_part_ram_bore_m_too" CHECK(("bore" IS NULL) = ("bore_m" IS NULL)),
	CONSTRAINT "shelf_part_ram_rod" CHECK(length("rod") BETWEEN 1 AND 64),
	CONSTRAINT "shelf_part_ram_rod_m" CHECK("rod_m" > 0 AND "rod_m" <= 0.5),
	CONSTRAINT "shelf_part_ram_rod_m_too" CHECK(("rod" IS NULL) = ("rod_m" IS NULL)),
	CONSTRAINT "shelf_part_ram_stroke" CHECK(length("stroke") BETWEEN 1 AND 64),
	CONSTRAINT "shelf_part_ram_stroke_m" CHECK("stroke_m" > 0 AND "stroke_m" <= 2),
	CONSTRAINT "shelf_part_ram_stroke_m_too" CHECK(("stroke" IS NULL) = ("stroke_m" IS NULL)),
	CONSTRAINT "shelf_part_ram_closed_length" CHECK(length("closed_length") BETWEEN 1 AND 64),
	CONSTRAINT "shelf_part_ram_closed_length_m" CHECK("closed_length_m" > 0 AND "closed_length_m" <= 10),
	CONSTRAINT "shelf_part_ram_closed_length_m_too" CHECK(("closed_length" IS NULL) = ("closed_length_m" IS NULL))
) STRICT;
--> statement-breakpoint
CREATE TABLE `shelf_part_tube` (
	`part` integer PRIMARY KEY NOT NULL,
	`kind` text NOT NULL,
	`serves` text,
	`outside_diameter` text,
	`outside_diameter_m` real,
	`wall` text,
	`wall_m` real,
	`length` text,
	`length_m` real,
	`material` text,
	FOREIGN KEY (`part`,`kind`) REFERENCES `shelf_part`(`number`,`kind`) ON UPDATE no action ON DELETE cascade,
	CONSTRAINT "shelf_part_tube_kind" CHECK("kind" IN ('tube')),
	CONSTRAINT "shelf_part_tube_serves" CHECK("serves" IN ('tie rod', 'drag link', 'other')),
	CONSTRAINT "shelf_part_tube_outside_diameter" CHECK(length("outside_diameter") BETWEEN 1 AND 64),
	CONSTRAINT "shelf_part_tube_outside_diameter_m" CHECK("outside_diameter_m" > 0 AND "outside_diameter_m" <= 0.5),
	CONSTRAINT "shelf_part_tube_outside_diameter_m_too" CHECK(("outside_diameter" IS NULL) = ("outside_diameter_m" IS NULL)),
	CONSTRAINT "shelf_part_tube_wall" CHECK(length("wall") BETWEEN 1 AND 64),
	CONSTRAINT "shelf_part_tube_wall_m" CHECK("wall_m" > 0 AND "wall_m" <= 0.1),
	CONSTRAINT "shelf_part_tube_wall_m_too" CHECK(("wall" IS NULL) = ("wall_m" IS NULL)),
	CONSTRAINT "shelf_part_tube_length" CHECK(length("length") BETWEEN 1 AND 64),
	CONSTRAINT "shelf_part_tube_length_m" CHECK("length_m" > 0 AND "length_m" <= 10),
	CONSTRAINT "shelf_part_tube_length_m_too" CHECK(("length" IS NULL) = ("length_m" IS NULL)),
	CONSTRAINT "shelf_part_tube_material" CHECK(length("material") BETWEEN 1 AND 200)
) STRICT;
--> statement-breakpoint
CREATE INDEX `shelf_part_by_name` ON `shelf_part` (`name` COLLATE NOCASE,`number`);--> statement-breakpoint
CREATE VIRTUAL TABLE `shelf_words` USING fts5(
	words,
	content = '',
	contentless_delete = 1,
	prefix = '1 2 3',
	tokenize = 'unicode61 remove_diacritics 2'
);
