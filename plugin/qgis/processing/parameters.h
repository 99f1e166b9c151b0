// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QString>
#include <QVariantMap>
#include <memory>

#include "pipward/operation/operation.h"

class QgsProcessingAlgorithm;
class QgsProcessingContext;
class QgsProcessingParameterDefinition;

namespace pipward::desktop {

/// "as-of" becomes "AS_OF".
QString parameter_name(const operation::Parameter& parameter);
/// The desktop's parameter for a declared one, its words in the user's language.
std::unique_ptr<QgsProcessingParameterDefinition> make_parameter(const operation::Parameter& parameter);
/// The value as the text that operations read; empty where it was not given.
QString value_text(const operation::Parameter& parameter, const QgsProcessingAlgorithm& algorithm,
                   const QVariantMap& values, QgsProcessingContext& context);

}  // namespace pipward::desktop
