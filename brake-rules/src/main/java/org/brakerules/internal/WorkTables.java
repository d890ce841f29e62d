package org.brakerules.internal;

import org.brakerules.internal.finalcheck.FinalTable;
import org.brakerules.internal.parts.PartsTables;
import org.brakerules.internal.record.RetentionTable;
import org.brakerules.internal.table.Tables;
import org.brakerules.internal.vehicle.VehicleStatusMaker;
import org.brakerules.internal.work.StepTable;
import org.jspecify.annotations.Nullable;

/**
 * What follows from decisions, as tables. They are read when something asks for them, since who
 * only decides should not wait for them.
 */
public final class WorkTables {

  private final Tables tables;
  private @Nullable PartsTables parts;
  private @Nullable StepTable steps;
  private @Nullable FinalTable finalChecks;
  private @Nullable VehicleStatusMaker vehicle;
  private @Nullable RetentionTable retention;

  /** The tables beside those of the rule base. */
  public WorkTables(Tables tables) {
    this.tables = tables;
  }

  /** Items, quantities and axle sets. */
  public synchronized PartsTables parts() {
    PartsTables read = parts;
    if (read == null) {
      read = PartsTables.load(tables.sources());
      parts = read;
    }
    return read;
  }

  /** The steps of the work. */
  public synchronized StepTable steps() {
    StepTable read = steps;
    if (read == null) {
      read = StepTable.load(tables);
      steps = read;
    }
    return read;
  }

  /** The final checks. */
  public synchronized FinalTable finalChecks() {
    FinalTable read = finalChecks;
    if (read == null) {
      read = FinalTable.load(tables, steps().ids());
      finalChecks = read;
    }
    return read;
  }

  /** The criteria for whole vehicles, with what holds a vehicle against them. */
  public synchronized VehicleStatusMaker vehicle() {
    VehicleStatusMaker read = vehicle;
    if (read == null) {
      read = new VehicleStatusMaker(tables);
      vehicle = read;
    }
    return read;
  }

  /** How long records are kept. */
  public synchronized RetentionTable retention() {
    RetentionTable read = retention;
    if (read == null) {
      read = RetentionTable.load(tables);
      retention = read;
    }
    return read;
  }
}
